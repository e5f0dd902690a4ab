import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { parseXml } from '../../../taskpane/workbook/xlsx/leanXml.js';
import { LIMITS } from '../../../taskpane/workbook/xlsx/limits.js';
import { readBook } from '../../../taskpane/workbook/xlsx/readBook.js';
import { opened, partsOf, readParts, relations, rows, words, zipped } from './handMade.js';

const read = (bytes: Uint8Array) => readBook(bytes, parseXml, words);
const plain = partsOf({ sheets: [rows('<c r="A1"><v>1</v></c>')] });
const refusalOf = (answer: ReturnType<typeof read>) => ('refusal' in answer ? answer.refusal : 'opened');

describe('a file that is no workbook', () => {
  it('is refused where it is empty', () => {
    expect(refusalOf(read(new Uint8Array(0)))).toBe(words.empty);
  });

  it('is refused where it is no zip file', () => {
    expect(refusalOf(read(strToU8('date;dose\n2026-01-01;90\n'.repeat(50))))).toBe(words.noZip);
  });

  it('is refused with its own sentence where it is encrypted or of the older kind', () => {
    const bytes = new Uint8Array(600);
    bytes.set([0xd0, 0xcf, 0x11, 0xe0]);
    expect(refusalOf(read(bytes))).toBe(words.encrypted);
  });

  it('is refused wherever it is cut off', () => {
    const whole = zipped(plain);
    for (let length = 0; length < whole.length; length += 7)
      expect(refusalOf(read(whole.subarray(0, length))), `${length} bytes`).not.toBe('opened');
  });

  it('never makes the reader throw, whichever byte is changed', () => {
    const whole = zipped(plain);
    for (let place = 0; place < whole.length; place += 1) {
      const changed = whole.slice();
      changed[place] = (changed[place] as number) ^ 0xff;
      const answer = read(changed);
      expect('refusal' in answer ? answer.refusal.length : answer.book.sheets.length).toBeGreaterThan(0);
    }
  });

  it('is refused where the parts name no workbook, or none is there', () => {
    expect(refusalOf(readParts({ 'a.txt': 'a' }))).toBe(words.noWorkbook);
    const { 'xl/workbook.xml': _, ...without } = plain;
    expect(refusalOf(readParts(without))).toBe(words.noWorkbook);
  });

  it('is refused where it has no sheet, or the parts of all sheets are missing', () => {
    expect(refusalOf(readParts(partsOf({})))).toBe(words.noSheets);
    const { 'xl/worksheets/sheet1.xml': _, ...without } = plain;
    expect(refusalOf(readParts(without))).toBe(words.noSheets);
  });

  it('is refused where a part is no XML, naming the part', () => {
    const answer = readParts({ ...plain, 'xl/worksheets/sheet1.xml': '<worksheet><sheetData>' });
    expect(refusalOf(answer)).toBe(words.damagedPart('xl/worksheets/sheet1.xml'));
  });
});

describe('a file beyond a limit', () => {
  it('is refused by its size before it is looked into', () => {
    expect(refusalOf(read(new Uint8Array(LIMITS.packed + 1)))).toBe(words.packed(20.1, 20));
  });

  it('is refused where it has too many parts', () => {
    const many = Object.fromEntries(Array.from({ length: LIMITS.entries }, (_, number) => [`${number}.txt`, '']));
    expect(refusalOf(readParts({ ...many, ...plain }))).toMatch(
      /^it has 5,0\d\d parts, and at most 5,000 are taken\.$/,
    );
  });

  it('is refused where it has too many sheets', () => {
    const parts = partsOf({ sheets: Array.from({ length: LIMITS.sheets + 1 }, () => rows()) });
    expect(refusalOf(readParts(parts))).toBe(words.sheets(101, 100));
  });

  it('is refused where few bytes grow to very many letters', () => {
    const texts = `<si><t>${'a'.repeat(32_000)}</t></si>`;
    const line = '<c t="s"><v>0</v></c>'.repeat(210);
    expect(refusalOf(readParts(partsOf({ sheets: [rows(line, line, line)], texts })))).toBe(
      words.characters(LIMITS.characters),
    );
  });

  it('is refused where it has too many cells', () => {
    const line = `<row>${'<c><v>1</v></c>'.repeat(250)}</row>`;
    const parts = partsOf({ sheets: [`<sheetData>${line.repeat(LIMITS.cells / 250 + 1)}</sheetData>`] });
    expect(refusalOf(read(zipped(parts, 0)))).toBe(words.cells(LIMITS.cells));
  }, 60_000);

  it('loses what is beyond the letters of one cell, or piled upon one letter, and says so', () => {
    const text = (inside: string) => `<c t="inlineStr"><is><t>${inside}</t></is></c>`;
    const line = `${text('a'.repeat(40_000))}${text(`e${'\u0301'.repeat(20_000)}`)}${text('Café, 20 g/hL, long enough')}`;
    const { book, leftOut } = opened({ sheets: [rows(line)] });
    expect(book.sheets[0]?.rows[0]?.map((cell) => String(cell?.value).length)).toEqual([LIMITS.text, 21, 26]);
    expect(leftOut).toEqual([words.parts.longTexts]);
  });

  it('loses conditional formats over more cells than are looked at, and says so', () => {
    const format = (where: string) =>
      `<conditionalFormatting sqref="${where}"><cfRule type="expression" priority="1"><formula>A1&gt;1</formula></cfRule></conditionalFormatting>`;
    const cells = rows('<c><v>1</v></c>');
    // Whole columns reach as far as the sheet is used, and a thousand rows at least.
    const whole = opened({ sheets: [cells + format('A1:B1048576')] });
    expect(whole.book.sheets[0]?.conditions?.map(({ range }) => range)).toEqual(['A1:B1000']);
    const vast = opened({ sheets: [cells + format('A1:IV1048576')] });
    expect(vast.book.sheets[0]?.conditions).toBeUndefined();
    expect(vast.leftOut).toEqual([words.parts.conditions]);
  });

  it('loses cells beyond the last row or column, and says so', () => {
    const far = '<row r="1048576"><c r="A1048576"><v>1</v></c></row>';
    const wide = Array.from({ length: 40_000 }, () => '<c><v>1</v></c>').join('');
    const { book, leftOut } = opened({ sheets: [`<sheetData><row r="1">${wide}</row>${far}</sheetData>`] });
    expect(book.sheets[0]?.rows).toHaveLength(1);
    expect(book.sheets[0]?.rows[0]).toHaveLength(LIMITS.columns);
    expect(leftOut).toEqual([words.parts.outsideCells(LIMITS.rows, LIMITS.columns)]);
  });

  it('may declare as many empty rows and columns as a sheet has', () => {
    const declared = '<dimension ref="A1:XFD1048576"/><cols><col min="1" max="16384" width="9"/></cols>';
    const { book, leftOut } = opened({ sheets: [`${declared}${rows('<c r="A1"><v>1</v></c>')}`] });
    expect(book.sheets[0]?.widths).toHaveLength(LIMITS.columns);
    expect(leftOut).toEqual([]);
  });
});

describe('a part with something harmful in it', () => {
  it('is refused where it defines a document type or entities', () => {
    const harm = '<!DOCTYPE a [<!ENTITY b SYSTEM "file:///etc/passwd">]>';
    const parts = { ...plain, 'xl/worksheets/sheet1.xml': `<?xml version="1.0"?>${harm}<worksheet>&b;</worksheet>` };
    expect(refusalOf(readParts(parts))).toBe(words.doctype);
  });

  it('reads no part from outside the file', () => {
    const parts = {
      ...plain,
      'xl/_rels/workbook.xml.rels': relations(['rId1', 'worksheet', 'http://localhost/sheet.xml']).replace(
        '/></',
        ' TargetMode="External"/></',
      ),
    };
    expect(refusalOf(readParts(parts))).toBe(words.noSheets);
  });

  it('passes over cells whose address is none, and says so', () => {
    const absurd = ['A0', 'ZZZZ9', '-1', 'A99999999999', '', '__proto__', 'A1:B2'];
    const line = absurd.map((one) => `<c r="${one}"><v>1</v></c>`).join('');
    const { book, leftOut } = opened({ sheets: [rows(`${line}<c r="B1"><v>2</v></c>`)] });
    expect(book.sheets[0]?.rows).toEqual([[undefined, { value: 2 }]]);
    expect(leftOut).toEqual([words.parts.brokenCells]);
  });

  it('gives shared formulas that refer to each other in a circle no formula, and keeps their values', () => {
    const line = '<c r="A1"><f t="shared" si="0"/><v>1</v></c><c r="B1"><f t="shared" si="0"/><v>2</v></c>';
    const { book, leftOut } = opened({ sheets: [rows(line)] });
    expect(book.sheets[0]?.rows[0]).toEqual([{ value: 1 }, { value: 2 }]);
    expect(leftOut).toEqual([words.parts.brokenFormulas]);
  });

  it('takes no name that stands for another name, so that none goes round in a circle', () => {
    const after =
      '<definedNames><definedName name="a">b</definedName><definedName name="b">a</definedName></definedNames>';
    const { book, leftOut } = opened({ sheets: [rows()], after });
    expect(book.values).toBeUndefined();
    expect(leftOut).toEqual([words.parts.names]);
  });
});
