import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it, onTestFinished } from 'vitest';
import { en } from '../../../taskpane/texts/en.js';
import { notationOf } from '../../../taskpane/workbook/entry/notation.js';
import { readNumber } from '../../../taskpane/workbook/entry/number.js';
import { gridOfBook } from '../../../taskpane/workbook/grid/ofBook.js';
import { bookOfGrid } from '../../../taskpane/workbook/grid/toBook.js';
import type { Book } from '../../../taskpane/workbook/xlsx/book.js';
import { LIMITS } from '../../../taskpane/workbook/xlsx/limits.js';
import { tooLarge } from '../../../taskpane/workbook/xlsx/tooLarge.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { calculateCells, calculateWorkbook } from '../headless.js';
import { cellsOf, opened, readOf, rows, words } from './handMade.js';

const sheetPart = (book: Book) => strFromU8(unzipSync(writeBook(book))['xl/worksheets/sheet1.xml'] as Uint8Array);
const book = (...cells: Book['sheets'][0]['rows']): Book => ({
  sheets: [{ name: 'S', rows: cells, widths: [], names: {}, headerRows: 0 }],
});

describe('a value in the grid', () => {
  it('is an error in the file where an error was typed, and a text where a text looks like one', async () => {
    const sheet = await calculateCells([['#N/A', '#DIV/0!', '#none', '=A1&""']]);
    onTestFinished(() => sheet.dispose());
    const part = sheetPart(bookOfGrid(sheet.grid));
    expect(part).toContain('<c r="A1" t="e"><v>#N/A</v></c><c r="B1" t="e"><v>#DIV/0!</v></c><c r="C1" t="inlineStr">');
    expect(part).toContain('<v>#N/A</v></c></row>');
  });

  it('keeps the empty text that a formula answers with, as a text', async () => {
    const sheet = await calculateCells([[0, '=IF(A1>0,A1,"")', '=LEN(B1)']]);
    onTestFinished(() => sheet.dispose());
    const part = sheetPart(bookOfGrid(sheet.grid));
    expect(part).toMatch(/<c r="B1" t="str"><f>IF\(A1&gt;0,A1,&quot;&quot;\)<\/f><v\/><\/c>/);
  });

  it('is never written as a number that is none', () => {
    for (const value of [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NaN])
      expect(sheetPart(book([{ value }]))).toContain('<c r="A1" t="e"><v>#NUM!</v></c>');
    const entry = readNumber('1e400', { notation: notationOf('en-GB'), words: en.entry });
    expect(entry).toEqual({ kind: 'text' });
  });
});

describe('a value in a file', () => {
  it('is the empty answer of a formula, and the grid shows nothing there', () => {
    const cell = '<c r="A1" t="str"><f>IF(B1&gt;0,B1,"")</f><v></v></c>';
    expect(cellsOf({ sheets: [rows(cell)] })[0]?.[0]).toEqual({ formula: '=IF(B1>0,B1,"")', value: '' });
  });

  it('is what it says, whatever its format, and a text also where it reads like an error or is empty', async () => {
    const styles = '<cellXfs><xf numFmtId="0"/><xf numFmtId="49"/></cellXfs>';
    const cells = [
      '<c r="A1" s="1"><v>5</v></c>',
      '<c r="B1" t="inlineStr"><is><t>#N/A</t></is></c>',
      '<c r="C1" t="inlineStr"><is><t/></is></c>',
      '<c r="D1"><f>SUM(A1)</f></c><c r="E1"><f>ISTEXT(B1)</f></c><c r="F1"><f>DATE(2025,12,9)</f></c>',
    ];
    const { book: read, leftOut } = opened({ sheets: [rows(cells.join(''))], styles });
    expect(leftOut).toEqual([words.parts.emptyTexts]);
    const sheet = await calculateWorkbook(gridOfBook(read));
    onTestFinished(() => sheet.dispose());
    expect(['A1', 'B1', 'D1', 'E1', 'F1'].map((place) => sheet.at(place).value)).toEqual([5, '#N/A', 5, true, 46000]);
    const part = sheetPart(bookOfGrid(sheet.grid));
    expect(part).toContain('<c r="B1" t="inlineStr"><is><t>#N/A</t></is></c><c r="C1" t="inlineStr"><is><t/></is></c>');
    // A day without a format is a number there, and no format is added.
    expect(part).toContain('<c r="F1"><f>DATE(2025,12,9)</f><v>46000</v></c>');
  });

  it('keeps returns, and letters that look like the code of one', () => {
    for (const value of ['a\r\nb', '\r', '_x000D_', '_x005F_', 'tab\tand _x41_']) {
      const { book: read } = readOf(writeBook(book([{ value, note: value }])));
      expect(read.sheets[0]?.rows[0]?.[0]).toMatchObject({ value, note: value });
    }
  });

  it('is an error again after opening and saving', async () => {
    const { book: read } = opened({ sheets: [rows('<c r="A1" t="e"><v>#DIV/0!</v></c>')] });
    const sheet = await calculateWorkbook(gridOfBook(read));
    onTestFinished(() => sheet.dispose());
    expect(sheetPart(bookOfGrid(sheet.grid))).toContain('<c r="A1" t="e"><v>#DIV/0!</v></c>');
  });

  const formats = ['yyyy-mm-dd', 'hh:mm', '[h]:mm', '[mm]:ss', 'mmm', 'yyyy-mm-dd hh:mm', '"day" 0.0', 'mm:ss'];
  const from1904 = (value: string, format: number, kind = '') =>
    cellsOf({
      before: '<workbookPr date1904="1"/>',
      styles: `<numFmts>${formats.map((code, n) => `<numFmt numFmtId="${200 + n}" formatCode="${code.replaceAll('"', '&quot;')}"/>`).join('')}</numFmts><cellXfs>${formats.map((_, n) => `<xf numFmtId="${200 + n}"/>`).join('')}</cellXfs>`,
      sheets: [rows(`<c r="A1" s="${format}"${kind}><v>${value}</v></c>`)],
    })[0]?.[0]?.value;

  it('is turned where it is a day counted from 1904, and only there', () => {
    // ECMA-376, part 1, 18.17.4.1: the two counts lie 1462 days apart.
    expect([from1904('44000', 0), from1904('44000', 4), from1904('44000.5', 5)]).toEqual([45462, 45462, 45462.5]);
    // Times of day, durations and plain numbers are no days.
    for (const format of [1, 2, 3, 6, 7]) expect(from1904('1.5', format)).toBe(1.5);
    for (const format of formats.keys()) expect(from1904('0.75', format)).toBe(0.75);
    // A day that is written out says which it is.
    expect(from1904('2025-12-09', 0, ' t="d"')).toBe(46000);
  });
});

describe('the limits of a file', () => {
  const filled = (cells: number) =>
    book(...Array.from({ length: Math.ceil(cells / 250) }, () => Array.from({ length: 250 }, () => ({ value: 1 }))));

  it('of opening are told when a workbook that goes beyond them is saved', () => {
    expect(tooLarge(filled(LIMITS.cells), words)).toBeUndefined();
    expect(tooLarge(filled(LIMITS.cells + 250), words)).toBe(words.cells(LIMITS.cells));
    const deep = { sheets: [{ ...(book().sheets[0] as Book['sheets'][0]), rows: Array(LIMITS.rows + 1) }] };
    expect(tooLarge(deep, words)).toBe(words.reach(LIMITS.rows, LIMITS.columns));
  });
});
