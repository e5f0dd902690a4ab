import { LIMITS } from '../../../taskpane/workbook/xlsx/limits.js';
import { rows, type TextParts } from '../xlsx/handMade.js';

interface Structure {
  readonly sheets: readonly string[];
  readonly after?: string;
  readonly styles?: string;
  readonly texts?: string;
  readonly more?: TextParts;
}

const many = (count: number, one: (number: number) => string) =>
  Array.from({ length: count }, (_, n) => one(n)).join('');
const cell = (formula: string, value = '1') => `<c><f>${formula}</f><v>${value}</v></c>`;
const column = (count: number, of: (row: number) => string) =>
  `<sheetData>${many(count, (n) => `<row r="${n + 1}">${of(n + 1)}</row>`)}</sheetData>`;
const rule = (formula: string, priority: number) =>
  `<cfRule type="expression" dxfId="0" priority="${priority}"><formula>${formula}</formula></cfRule>`;
const condition = (where: string, formula: string, priority = 1) =>
  `<conditionalFormatting sqref="${where}">${rule(formula, priority)}</conditionalFormatting>`;
const one = '<c r="A1"><v>1</v></c>';

/** Workbooks that are hostile by what they hold besides one formula. */
export const HOSTILE_STRUCTURES: Readonly<Record<string, () => Structure>> = {
  'two hundred conditional formats over everything': () => ({
    sheets: [rows(one) + many(200, (n) => condition('A1:IV100000', `A1&gt;${n}`, n + 1))],
  }),
  'a conditional format whose formula has no end': () => ({
    sheets: [rows(one) + condition('A1:Z200', 'SUM(INDIRECT("A1:XFD1048576"))&gt;A1')],
  }),
  'a thousand conditional formats on one cell': () => ({
    sheets: [rows(one) + many(1000, (n) => condition('A1', `A1=${n}`, n + 1))],
  }),
  'conditional formats of all columns': () => ({
    sheets: [rows(one) + many(256, (n) => condition('A:IV', `$A1=${n}`, n + 1))],
  }),
  'rules for entries in whole columns': () => ({
    sheets: [
      `${column(5000, () => '<c><v>1</v></c>')}<dataValidations>${many(
        1000,
        () =>
          '<dataValidation type="decimal" sqref="A1:XFD1048576"><formula1>0</formula1><formula2>9</formula2></dataValidation>',
      )}</dataValidations>`,
    ],
  }),
  'a list of very many choices': () => ({
    sheets: [
      `${rows(one)}<dataValidations><dataValidation type="list" sqref="A1:A100"><formula1>"${many(50_000, (n) => `${n},`)}"</formula1></dataValidation></dataValidations>`,
    ],
  }),
  'a rule for entries whose formula has no end': () => ({
    sheets: [
      `${rows(one)}<dataValidations><dataValidation type="custom" sqref="A1"><formula1>SUM(INDIRECT("A1:XFD1048576"))</formula1></dataValidation></dataValidations>`,
    ],
  }),
  'very many merged cells': () => ({
    sheets: [
      `${rows(one)}<mergeCells>${many(50_000, (n) => `<mergeCell ref="A${n * 2 + 1}:B${n * 2 + 2}"/>`)}</mergeCells>`,
    ],
  }),
  'one merged cell as large as a sheet': () => ({
    sheets: [`${rows(one)}<mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells>`],
  }),
  'very many names': () => ({
    sheets: [rows(one)],
    after: `<definedNames>${many(20_000, (n) => `<definedName name="name_${n}">'Sheet 1'!$A$1</definedName>`)}</definedNames>`,
  }),
  'a name that stands for a formula without end': () => ({
    sheets: [rows(cell('endless+1'))],
    after: '<definedNames><definedName name="endless">SUM(INDIRECT("A1:XFD1048576"))</definedName></definedNames>',
  }),
  'names that stand for each other': () => ({
    sheets: [rows(cell('n0'))],
    after: `<definedNames>${many(1000, (n) => `<definedName name="n${n}">n${(n + 1) % 1000}+n${(n + 2) % 1000}</definedName>`)}</definedNames>`,
  }),
  'twenty thousand looks': () => ({
    sheets: [column(20_000, (n) => `<c s="${n - 1}"><v>1</v></c>`)],
    styles: `<fonts>${many(20_000, (n) => `<font><sz val="${8 + (n % 60)}"/><color rgb="FF${(n * 7).toString(16).padStart(6, '0')}"/></font>`)}</fonts><cellXfs>${many(20_000, (n) => `<xf fontId="${n}"/>`)}</cellXfs>`,
  }),
  'a font of a million points': () => ({
    sheets: [rows('<c s="0" t="inlineStr"><is><t>large</t></is></c>')],
    styles: '<fonts><font><sz val="1000000"/></font></fonts><cellXfs><xf fontId="0"/></cellXfs>',
  }),
  'a number format of ten thousand places': () => ({
    sheets: [rows('<c s="0"><v>1.5</v></c>')],
    styles: `<numFmts><numFmt numFmtId="200" formatCode="0.${'0'.repeat(10_000)}"/></numFmts><cellXfs><xf numFmtId="200"/></cellXfs>`,
  }),
  'dates beyond all time': () => ({
    sheets: [rows('<c s="0"><v>1E300</v></c><c s="0"><v>-1E300</v></c>')],
    styles:
      '<numFmts><numFmt numFmtId="200" formatCode="yyyy-mm-dd"/></numFmts><cellXfs><xf numFmtId="200"/></cellXfs>',
  }),
  'all cells that are taken, each with a formula': () => ({
    sheets: [
      `<sheetData>${many(1000, (r) => `<row r="${r + 1}">${many(100, (c) => cell(`${r}+${c}`))}</row>`)}</sheetData>`,
    ],
  }),
  'ten thousand running totals': () => ({
    sheets: [column(10_000, (n) => `<c><v>1</v></c>${cell(`SUM(A$1:A${n})`)}`)],
  }),
  'a chain of ten thousand cells': () => ({
    sheets: [column(10_000, (n) => (n === 1 ? '<c><v>1</v></c>' : cell(`A${n - 1}+1`)))],
  }),
  'a ring of cells': () => ({ sheets: [column(500, (n) => cell(`A${(n % 500) + 1}+1`))] }),
  'rings over all sheets': () => ({
    sheets: Array.from({ length: 50 }, (_, n) => rows(cell(`'Sheet ${((n + 1) % 50) + 1}'!A1+1`))),
  }),
  'addresses that lead to the next address': () => ({ sheets: [column(2000, (n) => cell(`INDIRECT("A${n + 1}")`))] }),
  'each cell the sum of all cells': () => ({ sheets: [column(300, () => cell('SUM(A1:Z100000)'))] }),
  'a thousand formulas without end': () => ({
    sheets: [column(1000, (n) => cell(`SUM(INDIRECT("A${n}:XFD1048576"))`))],
  }),
  'one formula that fills a whole sheet': () => ({
    sheets: [rows('<c r="A1"><f t="array" ref="A1:XFD1048576">ROW(A1:IV100000)</f><v>1</v></c>')],
  }),
  'one formula shared by very many cells': () => ({
    sheets: [
      column(60_000, (n) =>
        n === 1
          ? '<c><f t="shared" si="0" ref="A1:A60000">B1+1</f><v>1</v></c>'
          : '<c><f t="shared" si="0"/><v>1</v></c>',
      ),
    ],
  }),
  'texts of 32,767 letters': () => ({
    sheets: [column(500, () => `<c t="inlineStr"><is><t>${'long words '.repeat(2978)}</t></is></c>`)],
  }),
  'one text of ten million letters': () => ({
    sheets: [rows(`<c t="inlineStr"><is><t>${'a'.repeat(10_000_000)}</t></is></c>`)],
  }),
  'letters with thousands of marks above': () => ({
    sheets: [rows(`<c t="inlineStr"><is><t>a${'\u0301'.repeat(20_000)}</t></is></c>`)],
  }),
  'an attribute of five million letters': () => ({
    sheets: [`${rows(one)}<sheetPr codeName="${'a'.repeat(5_000_000)}"/>`],
  }),
  'elements in elements': () => ({ sheets: [`${rows(one)}${'<a>'.repeat(50_000)}${'</a>'.repeat(50_000)}`] }),
  'very many texts that no cell shows': () => ({
    sheets: [rows(one)],
    texts: many(300_000, (n) => `<si><t>${n}</t></si>`),
  }),
  'a hundred sheets': () => ({ sheets: Array.from({ length: LIMITS.sheets }, () => column(30, () => cell('1+1'))) }),
  'rows from last to first, and each cell twice': () => ({
    sheets: [
      `<sheetData>${many(20_000, (n) => `<row r="${20_000 - n}"><c r="A1"><v>1</v></c><c r="A1"><v>2</v></c></row>`)}</sheetData>`,
    ],
  }),
  'panes that are frozen far beyond the window': () => ({
    sheets: [
      `<sheetViews><sheetView><pane xSplit="16000" ySplit="1000000" state="frozen"/></sheetView></sheetViews>${rows(one)}`,
    ],
  }),
  'widths without measure': () => ({
    sheets: [`<cols>${many(5000, () => '<col min="1" max="16384" width="1E308"/>')}</cols>${rows(one)}`],
  }),
  'very many relations': () => ({
    sheets: [rows(one)],
    more: {
      'xl/worksheets/_rels/sheet1.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${many(100_000, (n) => `<Relationship Id="r${n}" Type="a" Target="b${n}.xml"/>`)}</Relationships>`,
    },
  }),
  'a part that unpacks to a thousand times its size': () => ({
    sheets: [rows(one)],
    texts: `<si><t>${' '.repeat(39_000_000)}</t></si>`,
  }),
  'very many parts': () => ({
    sheets: [rows(one)],
    more: Object.fromEntries(Array.from({ length: 4900 }, (_, n) => [`xl/media/${n}.png`, 'x'])),
  }),
  'very many notes': () => ({
    sheets: [column(1000, () => '<c><v>1</v></c>')],
    more: {
      'xl/worksheets/_rels/sheet1.xml.rels':
        '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/comments" Target="../comments1.xml"/></Relationships>',
      'xl/comments1.xml': `<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><commentList>${many(50_000, (n) => `<comment ref="A${(n % 1000) + 1}"><text><t>note ${n}</t></text></comment>`)}</commentList></comments>`,
    },
  }),
};
