import { formula, inline, number, sheetData } from '../cells.js';
import { type Made, xml } from '../make.js';

const DEFINED: readonly (readonly [name: string, meaning: string, said?: string])[] = [
  ['VAT', '0.19'],
  ['greeting', '"hello"'],
  ['truth', 'TRUE'],
  ['below', '-5'],
  ['amounts', "'Data 1'!$A$1:$A$3"],
  ['first', "'Data 1'!$A$1"],
  ['local', 'Other!$A$1', 'localSheetId="1"'],
  ['same', "'Data 1'!$A$1", 'localSheetId="0"'],
  ['same', 'Other!$A$1', 'localSheetId="1"'],
  ['total', "SUM('Data 1'!$A$1:$A$3)"],
  ['moving', "OFFSET('Data 1'!$A$1,0,0,COUNT('Data 1'!$A:$A),1)"],
  ['gross', 'first*(1+VAT)'],
  ['two', "'Data 1'!$A$1,'Data 1'!$A$3"],
  ['whole', "'Data 1'!$A:$A"],
  ['Preis_je_kg', "'Data 1'!$A$2"],
  ['Größe', "'Data 1'!$A$3"],
  ['secret', "'Data 1'!$A$2", 'hidden="1"'],
  ['twice', '_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2)'],
  ['broken', '#REF!'],
];

/** Names of every kind: values, places of one sheet or of all, hidden, computed, with umlauts, broken. */
export const names: Made = {
  after: `<definedNames>${DEFINED.map(
    ([name, meaning, said = '']) => `<definedName name="${name}" ${said}>${xml(meaning)}</definedName>`,
  ).join('')}</definedNames>`,
  sheets: [
    {
      name: 'Data 1',
      inside: sheetData(
        [
          number('A1', 100),
          formula('B1', 'first*VAT', 19),
          formula('C1', 'SUM(amounts)', 600),
          number('A2', 200),
          formula('B2', 'greeting&"!"', 'hello!'),
          formula('C2', 'total', 600),
          number('A3', 300),
          formula('B3', 'secret+below', 195),
          formula('C3', 'SUM(moving)', 600),
          formula('A5', 'gross', 119),
          formula('B5', 'same', 100),
          formula('C5', 'SUM(two)', 400),
          formula('A6', 'Größe+Preis_je_kg', 500),
          formula('B6', 'twice(4)', 8),
          formula('C6', 'IF(truth,1,2)', 1),
        ].sort((one, other) => one.at.localeCompare(other.at)),
      ),
    },
    {
      name: 'Other',
      inside: sheetData([number('A1', 7), formula('B1', 'local*2', 14), formula('C1', 'same', 7), inline('D1', 'x')]),
    },
  ],
};

const TABLE = `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="Runs" displayName="Runs" ref="A1:C4" totalsRowShown="0"><autoFilter ref="A1:C4"/><tableColumns count="3"><tableColumn id="1" name="Day"/><tableColumn id="2" name="Volume"/><tableColumn id="3" name="Twice"><calculatedColumnFormula>Runs[[#This Row],[Volume]]*2</calculatedColumnFormula></tableColumn></tableColumns><tableStyleInfo name="TableStyleMedium2" showRowStripes="1"/></table>`;

/** A table and formulas that read it by its own words. */
export const tables: Made = {
  types: { '/xl/tables/table1.xml': 'application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml' },
  more: { 'xl/tables/table1.xml': TABLE },
  sheets: [
    {
      name: 'Table',
      links: [['rId1', 'table', '../tables/table1.xml']],
      inside: `${sheetData([
        ...['Day', 'Volume', 'Twice'].map((text, n) => inline(`${'ABC'[n]}1`, text)),
        ...[1, 2, 3].flatMap((row) => [
          inline(`A${row + 1}`, `day ${row}`),
          number(`B${row + 1}`, row * 10),
          formula(`C${row + 1}`, 'Runs[[#This Row],[Volume]]*2', row * 20),
        ]),
        formula('E5', 'SUM(Runs[Volume])', 60),
        formula('E6', 'ROWS(Runs[#All])', 4),
      ])}<tableParts count="1"><tablePart r:id="rId1"/></tableParts>`,
    },
  ],
};
