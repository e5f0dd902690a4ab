import { formula, inline, number, sheetData } from '../cells.js';
import { looks } from '../looks.js';
import type { Made } from '../make.js';

const body = sheetData(
  [1, 2, 3, 4, 5].flatMap((n) => [number(`A${n}`, n * 10), number(`B${n}`, n), inline(`C${n}`, 'text')]),
);
const rule = (sqref: string, inside: string) =>
  `<conditionalFormatting sqref="${sqref}">${inside}</conditionalFormatting>`;
const color = (rgb: string) => `<color rgb="FF${rgb}"/>`;

/** Conditional formats of every family: by formula, value, text, top, scale of colours, bars, signs. */
export const conditions: Made = {
  styles: looks({
    cells: [],
    conditions: [
      '<dxf><font><b/><color rgb="FF9C0006"/></font><fill><patternFill><bgColor rgb="FFFFC7CE"/></patternFill></fill></dxf>',
      '<dxf><fill><patternFill><bgColor rgb="FFC6EFCE"/></patternFill></fill></dxf>',
    ],
  }),
  sheets: [
    {
      name: 'Conditions',
      inside: `${body}${rule('A1:A5', '<cfRule type="expression" dxfId="0" priority="1"><formula>$B1&gt;3</formula></cfRule>')}${rule(
        'A1:A5',
        '<cfRule type="cellIs" dxfId="1" priority="2" operator="between"><formula>10</formula><formula>20</formula></cfRule>',
      )}${rule('B1:B2 B4:B5', '<cfRule type="expression" dxfId="1" priority="3" stopIfTrue="1"><formula>B1=1</formula></cfRule>')}${rule(
        'C1:C5',
        '<cfRule type="containsText" dxfId="0" priority="4" operator="containsText" text="ex"><formula>NOT(ISERROR(SEARCH("ex",C1)))</formula></cfRule>',
      )}${rule('A1:A5', '<cfRule type="top10" dxfId="1" priority="5" rank="2"/>')}${rule(
        'B1:B5',
        `<cfRule type="colorScale" priority="6"><colorScale><cfvo type="min"/><cfvo type="max"/>${color('FFFFFF')}${color('63BE7B')}</colorScale></cfRule>`,
      )}${rule('A1:A5', `<cfRule type="dataBar" priority="7"><dataBar><cfvo type="min"/><cfvo type="max"/>${color('638EC6')}</dataBar></cfRule>`)}`,
    },
  ],
};

const valid = (sqref: string, said: string, ...formulas: readonly string[]) =>
  `<dataValidation sqref="${sqref}" ${said}>${formulas.map((one, n) => `<formula${n + 1}>${one}</formula${n + 1}>`).join('')}</dataValidation>`;

const VALID = [
  valid(
    'A1:A5',
    'type="decimal" operator="between" allowBlank="1" showErrorMessage="1" errorTitle="Limits" error="From 0 to 100"',
    '0',
    '100',
  ),
  valid('B1:B5', 'type="whole" operator="greaterThan" showErrorMessage="1"', '0'),
  valid('C1', 'type="list" allowBlank="1" showErrorMessage="1"', '"red,green,blue"'),
  valid('C2', 'type="list" showErrorMessage="1"', '$E$1:$E$3'),
  valid('C3', 'type="date" operator="greaterThanOrEqual" showErrorMessage="1"', '45658'),
  valid('C4', 'type="textLength" operator="lessThanOrEqual" showErrorMessage="1"', '8'),
  valid('C5', 'type="custom" showErrorMessage="1"', 'ISNUMBER(C5)'),
  valid('D1', 'showInputMessage="1" promptTitle="Hint" prompt="What is due here"'),
  valid('D2', 'type="decimal" operator="greaterThan" errorStyle="stop" showErrorMessage="1"', '0'),
];
export const validations: Made = {
  sheets: [
    {
      name: 'Rules',
      inside: `${sheetData([
        ...[1, 2, 3].flatMap((n) => [
          number(`A${n}`, n),
          number(`B${n}`, n),
          inline(`C${n}`, 'red'),
          inline(`E${n}`, `choice ${n}`),
        ]),
      ])}<dataValidations count="${VALID.length}">${VALID.join('')}</dataValidations>`,
    },
  ],
};

/** Who may change what: cells, a sheet, the workbook. */
export const protection: Made = {
  before: '<workbookProtection lockStructure="1"/>',
  styles: looks({ cells: [{ protection: 'locked="0"' }, { protection: 'hidden="1"' }] }),
  sheets: [
    {
      name: 'Protected',
      inside: `${sheetData([number('A1', 1, 1), formula('B1', 'A1*2', 2, { look: 2 })])}<sheetProtection sheet="1" objects="1" scenarios="1"/>`,
    },
  ],
};
