import { afterEach, describe, expect, it } from 'vitest';
import { groupsIn } from '../../taskpane/workbook/engine/mends/groupsIn.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { type Calculated, calculateCells } from './headless.js';

let book: Calculated | undefined;
afterEach(() => {
  book?.dispose();
  book = undefined;
});
const shown = (...places: string[]) => places.map((place) => book?.at(place).value);

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

describe('circles', () => {
  it('are found in a chain of 100,000 without running out of room', () => {
    const ids = Array.from({ length: 100_000 }, (_, id) => id);
    const circles = (next: (id: number) => readonly number[]) =>
      groupsIn(ids, next).flatMap(({ ids: group, circular }) => (circular ? [group.length] : []));
    expect(circles((id) => (id < 99_999 ? [id + 1] : []))).toEqual([]);
    expect(circles((id) => [(id + 1) % 100_000])).toEqual([100_000]);
  });
});
