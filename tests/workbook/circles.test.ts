import { afterEach, describe, expect, it } from 'vitest';
import { groupsIn } from '../../taskpane/workbook/engine/mends/groupsIn.js';
import { gridOfBook } from '../../taskpane/workbook/grid/ofBook.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { type Calculated, calculateCells, calculateWorkbook } from './headless.js';
import { opened, rows } from './xlsx/handMade.js';

let book: Calculated | undefined;
afterEach(() => {
  book?.dispose();
  book = undefined;
});
const shown = (...places: string[]) => places.map((place) => book?.at(place).value);

describe('formulas of a file that read their own answer', () => {
  it('show it when the file is opened, copied down or by way of a range, and keep no answer of the file', async () => {
    const { book: read } = opened({
      sheets: [
        rows(
          '<c r="A1"><f t="shared" ref="A1:A2" si="0">A2+1</f><v>5</v></c><c r="B1"><f>INDIRECT("C1")</f><v>6</v></c>',
          '<c r="A2"><f t="shared" si="0"/><v>6</v></c><c r="C1"><f>B1+1</f><v>7</v></c>',
          '<c r="A3"><f>SUM(A1:A2)</f><v>7</v></c><c r="D3"><f>A4*2</f><v>8</v></c>',
        ),
      ],
    });
    book = await calculateWorkbook(gridOfBook(read));
    expect(shown('A1', 'A2', 'A3', 'B1', 'C1', 'D3')).toEqual([...Array(5).fill('#CYCLE!'), 0]);
  });
});

describe('formulas that read their own answer', () => {
  it.each([
    ['itself', [['=A1+1'], [2]], ['#CYCLE!']],
    ['two cells', [['=B1+1', '=A1+1']], ['#CYCLE!', '#CYCLE!']],
    [
      'through a range',
      [
        ['=SUM(B1:B3)', 1],
        ['', '=A1'],
        ['', 3],
      ],
      ['#CYCLE!', 1],
    ],
    ['and one that only reads them', [['=A1+1', '=A1*2', '=A2', '=1+1']], ['#CYCLE!', '#CYCLE!', 0, 2]],
    ['inside one of our functions', [['=POWDER.DRYMASS(A1,0.5)']], ['#CYCLE!']],
  ])('show that they do: %s', async (_, cells, first) => {
    book = await calculateCells(cells);
    expect(shown('A1', 'B1', 'C1', 'D1').slice(0, first.length)).toEqual(first);
  });

  it('show it when the circle is closed, over sheets and names, and figures again when it is broken', async () => {
    book = await calculateCells([[1, '=A1+1', '=B1+1']]);
    const workbook = workbookOf(book.grid);
    const other = workbook.insertSheet('Other');
    other.getRange('A1').setFormula("='Sheet 1'!C1");
    await book.enter('A1', '=Other!A1');
    expect(shown('A1', 'B1', 'C1')).toEqual(['#CYCLE!', '#CYCLE!', '#CYCLE!']);
    await book.enter('A1', 5);
    expect(shown('A1', 'B1', 'C1')).toEqual([5, 6, 7]);
    workbook.insertDefinedName('Start', "'Sheet 1'!$C$1");
    await book.enter('A1', '=Start');
    expect(shown('A1', 'B1', 'C1')).toEqual(['#CYCLE!', '#CYCLE!', '#CYCLE!']);
  });

  it('are none where only the place of a cell is asked for', async () => {
    book = await calculateCells([['=ROW(A1)', '=COLUMNS($A1:B1)*2', '=ROW(D1)+1', '=C1+ROWS(D$1:D1)']]);
    expect(shown('A1', 'B1', 'C1', 'D1')).toEqual([1, 4, 2, 3]);
    await book.enter('A1', '=ROW(A1)+A1');
    expect(shown('A1')).toEqual(['#CYCLE!']);
  });
});

describe('a formula that only asks for places', () => {
  it.each([
    ['the shape of a range that ends at it', '=COLUMNS($A1:B1)*A1', 4],
    ['one in brackets', '=ROWS((B1:B3))+A1', 5],
    ['the row of its own cell', '=CELL("row",B1)+A1', 3],
    ['a place counted from its own', '=OFFSET(B1,1,0)', 7],
    ['the shape of a place counted from its own', '=COLUMNS(OFFSET(B1,1,0,1,2))', 2],
    ['the cell beside it in a column that reads it elsewhere', '=SINGLE(A1:A2)*10', 20],
  ])('is no circle: %s', async (_, formula, expected) => {
    book = await calculateCells([
      [2, formula],
      ['=B1', 7, 8],
    ]);
    expect(shown('B1')).toEqual([expected]);
  });

  it.each([
    ['a shape that its own answer says', '=ROWS(OFFSET(C1,0,0,B1,1))'],
    ['what stands in its own cell', '=CELL("contents",B1)'],
    ['its own cell beside a shape', '=COLUMNS($A1:B1)+B1'],
    ['its own cell by its name in letters', '=INDIRECT("B"&1)+1'],
    ['its own cell counted from another', '=OFFSET(A1,0,1)+1'],
    ['the cell beside it, which reads it', '=SINGLE(C1:C2)'],
  ])('is a circle where it reads %s', async (_, formula) => {
    book = await calculateCells([[2, formula, '=B1']]);
    expect(shown('B1')).toEqual(['#CYCLE!']);
  });
});

describe('circles', () => {
  it('are found in a chain of 100,000 without running out of room', () => {
    const ids = Array.from({ length: 100_000 }, (_, id) => id);
    const circles = (next: (id: number) => readonly number[]) =>
      groupsIn(ids, next).flatMap(({ ids: group, circular }) => (circular ? [group.length] : []));
    expect(circles((id) => (id < 99_999 ? [id + 1] : []))).toEqual([]);
    expect(circles((id) => [(id + 1) % 100_000])).toEqual([100_000]);
  });
});
