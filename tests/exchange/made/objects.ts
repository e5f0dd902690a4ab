import { inline, number, sheetData } from '../cells.js';
import { type Link, linked, type Made } from '../make.js';

const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006';
const LINK = 'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';
const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

const COMMENTS = `<comments ${MAIN}><authors><author>Someone</author></authors><commentList><comment ref="A1" authorId="0"><text><t>A note</t></text></comment><comment ref="B2" authorId="0"><text><r><rPr><b/></rPr><t>Bold</t></r><r><t xml:space="preserve"> and plain, two
lines</t></r></text></comment><comment ref="D9" authorId="0"><text><t>In an empty cell</t></text></comment></commentList></comments>`;
const shape = (row: number, column: number, n: number) =>
  `<v:shape id="_x0000_s${1025 + n}" type="#_x0000_t202" style="visibility:hidden" fillcolor="#ffffe1"><x:ClientData ObjectType="Note"><x:Row>${row}</x:Row><x:Column>${column}</x:Column></x:ClientData></v:shape>`;
const VML = `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><v:shapetype id="_x0000_t202" coordsize="21600,21600" path="m,l,21600r21600,l21600,xe"/>${shape(0, 0, 0)}${shape(1, 1, 1)}${shape(8, 3, 2)}</xml>`;

/** Notes on cells, and links to the web, to a mailbox and to another sheet. */
export const notes: Made = {
  types: { '/xl/comments1.xml': `${SPREADSHEET}.comments+xml` },
  more: { 'xl/comments1.xml': COMMENTS, 'xl/drawings/vmlDrawing1.vml': VML },
  sheets: [
    {
      name: 'Notes',
      links: [
        ['rId1', 'comments', '../comments1.xml'],
        ['rId2', 'vmlDrawing', '../drawings/vmlDrawing1.vml'],
        ['rId3', 'hyperlink', 'https://example.com/powder?a=1', true],
        ['rId4', 'hyperlink', 'mailto:someone@example.com', true],
      ],
      inside: `${sheetData([inline('A1', 'noted'), number('B2', 2), inline('A4', 'web'), inline('A5', 'mail'), inline('A6', 'other sheet')])}<hyperlinks><hyperlink ref="A4" r:id="rId3" tooltip="Web"/><hyperlink ref="A5" r:id="rId4"/><hyperlink ref="A6" location="'Second sheet'!A1" display="other sheet"/></hyperlinks><legacyDrawing r:id="rId2"/>`,
    },
    { name: 'Second sheet', inside: sheetData([number('A1', 1)]) },
  ],
};

const reference = (name: string, kind: string, range: string) =>
  `<c:${name}><c:${kind}Ref><c:f>${range}</c:f></c:${kind}Ref></c:${name}>`;
const title = (text: string) =>
  `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:r><a:t>${text}</a:t></a:r></a:p></c:rich></c:tx></c:title>`;
const AXES = (x: string, y = 'valAx') =>
  `<c:${x}><c:axId val="1"/><c:scaling/><c:delete val="0"/><c:axPos val="b"/>${title('Day')}<c:crossAx val="2"/></c:${x}><c:${y}><c:axId val="2"/><c:scaling/><c:delete val="0"/><c:axPos val="l"/>${title('Volume in hL')}<c:crossAx val="1"/></c:${y}>`;
const chart = (inside: string, axes: string) =>
  `<c:chartSpace xmlns:c="${DRAWING}/chart" xmlns:a="${DRAWING}/main"><c:chart>${title('Volumes')}<c:plotArea><c:layout/>${inside}${axes}</c:plotArea><c:legend><c:legendPos val="b"/></c:legend></c:chart></c:chartSpace>`;

const series = (x: string, y: string) => (n: number, column: string) =>
  `<c:ser><c:idx val="${n}"/><c:order val="${n}"/>${reference('tx', 'str', `Charts!$${column}$1`)}${reference(x, 'num', 'Charts!$A$2:$A$5')}${reference(y, 'num', `Charts!$${column}$2:$${column}$5`)}</c:ser>`;
const plain = series('cat', 'val');
const scattered = series('xVal', 'yVal');
const IDS = '<c:axId val="1"/><c:axId val="2"/>';
const CHARTS = [
  chart(
    `<c:scatterChart><c:scatterStyle val="lineMarker"/>${scattered(0, 'B')}${scattered(1, 'C')}${IDS}</c:scatterChart>`,
    AXES('valAx'),
  ),
  chart(`<c:lineChart><c:grouping val="standard"/>${plain(0, 'B')}${IDS}</c:lineChart>`, AXES('catAx')),
  chart(
    `<c:barChart><c:barDir val="col"/><c:grouping val="clustered"/>${plain(0, 'B')}${plain(1, 'C')}${IDS}</c:barChart>`,
    AXES('catAx'),
  ),
  chart(`<c:pieChart>${plain(0, 'B')}</c:pieChart>`, ''),
];
const anchor = (n: number) =>
  `<xdr:twoCellAnchor><xdr:from><xdr:col>5</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${n * 15}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>12</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${n * 15 + 14}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to><xdr:graphicFrame><xdr:nvGraphicFramePr><xdr:cNvPr id="${n + 2}" name="Chart ${n + 1}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="${DRAWING}/chart"><c:chart xmlns:c="${DRAWING}/chart" r:id="rId${n + 1}"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`;

/** One chart of each common kind, over the same figures. */
export const charts: Made = {
  types: {
    '/xl/drawings/drawing1.xml': 'application/vnd.openxmlformats-officedocument.drawing+xml',
    ...Object.fromEntries(
      CHARTS.map((_, n) => [
        `/xl/charts/chart${n + 1}.xml`,
        'application/vnd.openxmlformats-officedocument.drawingml.chart+xml',
      ]),
    ),
  },
  more: {
    'xl/drawings/drawing1.xml': `<xdr:wsDr xmlns:xdr="${DRAWING}/spreadsheetDrawing" xmlns:a="${DRAWING}/main" ${LINK}>${CHARTS.map((_, n) => anchor(n)).join('')}</xdr:wsDr>`,
    'xl/drawings/_rels/drawing1.xml.rels': linked(
      CHARTS.map((_, n): Link => [`rId${n + 1}`, 'chart', `../charts/chart${n + 1}.xml`]),
    ),
    ...Object.fromEntries(CHARTS.map((text, n) => [`xl/charts/chart${n + 1}.xml`, text])),
  },
  sheets: [
    {
      name: 'Charts',
      links: [['rId1', 'drawing', '../drawings/drawing1.xml']],
      inside: `${sheetData([
        ...['day', 'one', 'two'].map((text, n) => inline(`${'ABC'[n]}1`, text)),
        ...[1, 2, 3, 4].flatMap((n) => [
          number(`A${n + 1}`, n),
          number(`B${n + 1}`, n * n),
          number(`C${n + 1}`, 10 - n),
        ]),
      ])}<drawing r:id="rId1"/>`,
    },
  ],
};
