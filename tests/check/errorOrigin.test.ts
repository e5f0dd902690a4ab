import { describe, expect, it } from 'vitest';
import { cellReference, placeText } from '../../taskpane/host/address.js';
import type { CellContent } from '../../taskpane/host/host.js';
import { errorOrigin } from '../../taskpane/pane/check/errorOrigin.js';
import { workbook } from './workbook.js';

const E = '#VALUE!';

/** From cell A1 of the first sheet. */
const from = (sheets: Parameters<typeof workbook>[0], shown: Record<string, CellContent>) => {
  const contents = workbook(sheets, shown);
  return placeText(errorOrigin(contents, cellReference(contents.active, 0, 0)), '');
};

describe('where an error began', () => {
  it('is followed through formulas to the first one that reads no error', () => {
    const chain = { Sheet1: [['=B1*2', '=POWDER.SAMESOLIDS(C1,0.1,0.2)', '=POWDER.DRYMASS(D1,0.5)', -5]] };
    expect(from(chain, { '0,0': E, '0,1': E, '0,2': E })).toBe('Sheet1 · C1');
  });

  it('is the cell itself where nothing that it reads shows one', () => {
    expect(from({ Sheet1: [['=1/B1', 0]] }, { '0,0': '#DIV/0!' })).toBe('Sheet1 · A1');
  });

  it('is found on another sheet, in a range and behind a name', () => {
    const shown = { '0,0': E, '1,1': E };
    expect(
      from(
        {
          Sheet1: [
            ['=SUM(Other!A1:B2)', null],
            [null, 1],
          ],
          Other: [
            [1, 2],
            [3, '=1/0'],
          ],
        },
        shown,
      ),
    ).toBe('Other · B2');
    expect(from({ Sheet1: [['=moisture*2', '=1/0']] }, { '0,0': E, '0,1': E })).toBe('Sheet1 · B1');
  });

  it('is found through a cell that an answer spilled into', () => {
    const contents = workbook(
      {
        Sheet1: [
          ['=B2', '=POWDER.DRYMASS(C1:C2,0.5)', -5],
          [null, null, 1],
        ],
      },
      { '0,0': E, '0,1': E },
    );
    const [sheet] = contents.sheets;
    const values = sheet?.values.map((line, row) => line.map((one, column) => (row === 1 && column === 1 ? E : one)));
    const spilled = { ...contents, sheets: [{ ...sheet, values }] } as typeof contents;
    expect(placeText(errorOrigin(spilled, cellReference('Sheet1', 0, 0)), '')).toBe('Sheet1 · B2');
  });

  it('comes to an end where formulas read each other, or cannot be read', () => {
    expect(from({ Sheet1: [['=B1', '=A1']] }, { '0,0': E, '0,1': E })).toBe('Sheet1 · B1');
    expect(from({ Sheet1: [['=IF((']] }, { '0,0': E })).toBe('Sheet1 · A1');
  });
});
