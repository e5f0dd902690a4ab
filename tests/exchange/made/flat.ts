const NAMESPACES = [
  ['office', 'office'],
  ['table', 'table'],
  ['text', 'text'],
  ['style', 'style'],
  ['number', 'datastyle'],
]
  .map(([prefix, name]) => `xmlns:${prefix}="urn:oasis:names:tc:opendocument:xmlns:${name}:1.0"`)
  .concat(
    'xmlns:fo="urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"',
    'xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"',
  )
  .join(' ');

const number = (value: number, look = '') =>
  `<table:table-cell office:value-type="float" office:value="${value}"${look ? ` table:style-name="${look}"` : ''}/>`;
const text = (words: string, look = '') =>
  `<table:table-cell office:value-type="string"${look ? ` table:style-name="${look}"` : ''}><text:p>${words}</text:p></table:table-cell>`;
const formula = (words: string) => `<table:table-cell table:formula="of:=${words}" office:value-type="float"/>`;
const row = (...cells: readonly string[]) => `<table:table-row>${cells.join('')}</table:table-row>`;

/** An OpenDocument workbook in one piece of text, from which LibreOffice makes an .xlsx file of its own. */
export const flat = `<?xml version="1.0" encoding="UTF-8"?>
<office:document ${NAMESPACES} office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:automatic-styles>
<style:style style:name="wide" style:family="table-column"><style:table-column-properties style:column-width="4cm"/></style:style>
<style:style style:name="head" style:family="table-cell"><style:table-cell-properties fo:background-color="#ddebf7" fo:border-bottom="0.06pt solid #000000" fo:wrap-option="wrap"/><style:paragraph-properties fo:text-align="center"/><style:text-properties fo:font-weight="bold"/></style:style>
<number:percentage-style style:name="share"><number:number number:decimal-places="1" number:min-integer-digits="1"/><number:text>%</number:text></number:percentage-style>
<style:style style:name="share-cell" style:family="table-cell" style:data-style-name="share"/>
</office:automatic-styles>
<office:body><office:spreadsheet>
<table:table table:name="Maße und Mengen"><table:table-column table:style-name="wide"/><table:table-column/>
${row(text('Größe', 'head'), text('Menge', 'head'), text('Anteil', 'head'))}
${[1, 2, 3].map((n) => row(number(n), number(n * 12.5), number(n / 8, 'share-cell'))).join('')}
${row(formula('SUM([.A2:.A4])'), formula('SUMPRODUCT([.A2:.A4];[.B2:.B4])'), formula('ROUND([.B3]/[.A3];2)'))}
${row(formula('[$Weitere.A1]*2'), formula('IF([.A2]&gt;0;7;8)'), formula('total+1'))}
</table:table>
<table:table table:name="Weitere">${row(number(21))}</table:table>
<table:named-expressions><table:named-range table:name="total" table:base-cell-address="$Weitere.$A$1" table:cell-range-address="$Weitere.$A$1"/></table:named-expressions>
</office:spreadsheet></office:body></office:document>`;
