import { afterEach, describe, expect, it } from 'vitest';
import { type Calculated, calculateCells } from './headless.js';

let book: Calculated;
afterEach(() => book.dispose());

const READERS = ['=C3', '=SUM(C1:C3)', '=IFERROR(C2,"none")', '=COUNT(C1:C3)'];
const shown = () => ['D1', 'E1', 'F1', 'G1'].map((place) => book.at(place).value);

describe('formulas that read an answer which becomes smaller', () => {
  it.each([
    ['one error', '=IF(A1=1,POWDER.DRYMASS(B1:B3,0.5),POWDER.DRYMASS(1,2))', [0, '#VALUE!', null, 0]],
    ['one cell', '=IF(A1=1,POWDER.DRYMASS(B1:B3,0.5),7)', [0, 7, null, 1]],
    ['two cells', '=POWDER.DRYMASS(IF(A1=1,B1:B3,B1:B2),0.5)', [0, 150, 100, 2]],
  ])('show what is left of it: %s', async (_, formula, left) => {
    book = await calculateCells([
      [1, 100, formula, ...READERS],
      ['', 200],
      ['', 300],
    ]);
    expect(shown()).toEqual([150, 300, 100, 3]);
    await book.enter('A1', 2);
    expect(shown()).toEqual(left);
    await book.enter('A1', 1);
    expect(shown()).toEqual([150, 300, 100, 3]);
  });

  it('follow when the formula itself is written over', async () => {
    book = await calculateCells([
      [1, 100, '=POWDER.DRYMASS(B1:B3,0.5)', ...READERS],
      ['', 200],
      ['', 300],
    ]);
    await book.enter('C1', 5);
    expect(shown()).toEqual([0, 5, null, 1]);
  });
});
