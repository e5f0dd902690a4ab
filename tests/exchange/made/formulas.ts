import { formula, inline, number, sheetData } from '../cells.js';
import type { Made } from '../make.js';

const METADATA = `<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;
const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

const DATA = [1, 2, 3, 4, 5, 6];
const data = DATA.flatMap((value, n) => [number(`A${n + 1}`, value)]);

/** Formulas of one answer: operators, plain functions, errors, truths, texts, references of all forms. */
export const formulas: Made = {
  sheets: [
    {
      name: 'Formulas',
      inside: sheetData([
        ...data,
        formula('B1', 'SUM(A1:A6)', 21),
        formula('B2', '$A$2*A$3+$A4-A5^2/2%', -1240),
        formula('B3', 'IF(A1>0,"yes","no")', 'yes'),
        formula('B4', 'IF(A1>0,"","no")', ''),
        formula('B5', 'A1=1', true),
        formula('B6', '1/0', '#DIV/0!'),
        formula('C1', 'VLOOKUP(99,A1:A6,1,FALSE)', '#N/A'),
        formula('C2', '"a ""quoted"" "&A1&" & <b>"', 'a "quoted" 1 & <b>'),
        formula('C3', "'Größe & Menge'!A1+'It''s 2'!A1", 30),
        formula('C4', 'SUM(A:A)', 21),
        formula('C5', 'SUM(2:2)', -1239),
        formula('C6', 'A1&{"x","y"}', '1x'),
        formula('D1', 'DATE(2025,12,9)', 46000),
        formula('D2', '-A1', -1),
        formula('D3', 'SUM(A1:A3,A5)', 11),
        formula('D4', 'IFERROR(B6,"none")', 'none'),
        formula('D5', '#REF!+1', '#REF!'),
        formula('D6', '1E+100*1E+100', 1e200),
      ]),
    },
    { name: 'Größe & Menge', inside: sheetData([number('A1', 10)]) },
    { name: "It's 2", inside: sheetData([number('A1', 20)]) },
  ],
};

/** A formula that cells share with the one that states it, down and across. */
export const sharedFormulas: Made = {
  sheets: [
    {
      name: 'Shared',
      inside: sheetData([
        ...data.flatMap((cell, n) => [
          cell,
          formula(`B${n + 1}`, n === 0 ? 'A1*2+$A$1' : '', (n + 1) * 2 + 1, {
            as: n === 0 ? 't="shared" ref="B1:B6" si="0"' : 't="shared" si="0"',
          }),
        ]),
        ...['A', 'B', 'C'].map((column, n) =>
          formula(`${column}8`, n === 0 ? 'SUM(A1:A6)' : '', [21, 48, 0][n] as number, {
            as: n === 0 ? 't="shared" ref="A8:C8" si="1"' : 't="shared" si="1"',
          }),
        ),
      ]),
    },
  ],
};

/** Answers of several cells: the older arrays of a fixed reach and the newer ones that spill. */
export const arrays: Made = {
  links: [['metadata', 'sheetMetadata', 'metadata.xml']],
  more: { 'xl/metadata.xml': METADATA },
  types: { '/xl/metadata.xml': `${SPREADSHEET}.sheetMetadata+xml` },
  sheets: [
    {
      name: 'Arrays',
      inside: sheetData([
        ...DATA.flatMap((value, n) => {
          const row = n + 1;
          return [
            number(`A${row}`, value),
            row === 1
              ? formula('B1', 'A1:A6*2', 2, { as: 't="array" ref="B1:B6"', spills: true })
              : number(`B${row}`, value * 2),
            ...(row === 1
              ? [
                  formula('C1', 'TRANSPOSE(A1:A3)', 1, { as: 't="array" ref="C1:E1"' }),
                  number('D1', 2),
                  number('E1', 3),
                ]
              : []),
            ...(row === 2 ? [formula('C2', 'SUM(A1:A6*A1:A6)', 91, { as: 't="array" ref="C2"' })] : []),
            ...(row === 3
              ? [
                  formula('C3', '_xlfn._xlws.SORT(A1:A3,1,-1)', 3, { as: 't="array" ref="C3:C5"', spills: true }),
                  formula('E3', 'SUM(_xlfn.ANCHORARRAY(B1))', 42),
                ]
              : []),
            ...(row === 4 ? [number('C4', 2)] : []),
            ...(row === 5 ? [number('C5', 1)] : []),
          ];
        }),
      ]),
    },
  ],
};

/** Formulas of the time before answers could spill: a range stands for the one cell beside the formula. */
export const intersection: Made = {
  after: '<definedNames><definedName name="amounts">Legacy!$A$1:$A$6</definedName></definedNames>',
  sheets: [
    {
      name: 'Legacy',
      inside: sheetData([
        ...DATA.flatMap((value, n) => {
          const row = n + 1;
          return [
            number(`A${row}`, value),
            formula(`B${row}`, 'A1:A6*2', value * 2),
            formula(`C${row}`, 'A:A+1', value + 1),
            formula(`D${row}`, 'amounts*3', value * 3),
            formula(`E${row}`, 'IF(amounts>3,"high","low")', value > 3 ? 'high' : 'low'),
            formula(`F${row}`, 'SUM(_xlfn.SINGLE($A$1:$A$6)*$A$1:$A$2)', value * 3, {
              as: `t="array" ref="F${row}"`,
              spills: true,
            }),
          ];
        }),
        inline('A7', 'below'),
        formula('B7', 'A1:A6*2', '#VALUE!'),
      ]),
    },
  ],
};
