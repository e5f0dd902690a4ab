import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dragged, stepped } from '../../taskpane/workbook/charts/grip.js';
import { boxOf, placeOfBox, within } from '../../taskpane/workbook/grid/chartPlace.js';
import { freePlace } from '../../taskpane/workbook/grid/freePlace.js';

/** Columns of 100 and rows of 20 pixels; the third column is hidden. */
const edges = {
  columns: [100, 200, 200, 300, 400, 500, 600, 700, 800, 900],
  rows: Array.from({ length: 60 }, (_, row) => 20 * (row + 1)),
};
const box = { left: 150, top: 30, width: 200, height: 150 };

describe('where a chart stands', () => {
  it('fills its cells where nothing else is told, and leaves hidden ones out', () => {
    expect(boxOf({ place: 'B2:D4' }, edges)).toEqual({ left: 100, top: 20, width: 200, height: 60 });
  });

  it('is told by cells and pixels inside of them, and found again from these', () => {
    expect(placeOfBox(box, edges)).toEqual({
      place: 'B2:E9',
      inset: { left: 50, top: 10, right: 50, bottom: 20 },
    });
    const any = fc.record({
      left: fc.integer({ min: 0, max: 700 }),
      top: fc.integer({ min: 0, max: 1000 }),
      width: fc.integer({ min: 160, max: 200 }),
      height: fc.integer({ min: 120, max: 200 }),
    });
    fc.assert(
      fc.property(any, (one) => {
        expect(boxOf(placeOfBox(one, edges), edges)).toEqual(one);
      }),
    );
  });

  it('is never beside the sheet, nor too small to be read', () => {
    expect(within({ left: -9, top: 1195, width: 10, height: 10 }, edges)).toEqual({
      left: 0,
      top: 1080,
      width: 160,
      height: 120,
    });
  });

  it('moves the sides that are held, and no side past the other', () => {
    expect(dragged(box, { x: 0, y: 0 }, 5, 7)).toEqual({ ...box, left: 155, top: 37 });
    expect(dragged(box, { x: 1, y: -1 }, 5, 7)).toEqual({ left: 150, top: 37, width: 205, height: 143 });
    expect(dragged(box, { x: -1, y: 0 }, 500, 0)).toEqual({ ...box, left: 190, width: 160 });
    expect(stepped(box, { key: 'ArrowDown', shiftKey: true })).toEqual({ ...box, height: 160 });
    expect(stepped(box, { key: 'a', shiftKey: false })).toBeUndefined();
  });
});

describe('the place of a new chart', () => {
  const wide = { columns: Array.from({ length: 30 }, (_, column) => 100 * (column + 1)), rows: edges.rows };
  const table = { top: 2, bottom: 8, left: 1, right: 2 };
  const sheet = { edges: wide, taken: [], last: { row: 20, column: 12 } };

  it('is beside its table, else below it, and never over figures or another chart', () => {
    const beside = freePlace(table, { ...sheet, isFree: () => true });
    expect(beside).toMatchObject({ left: 316, top: 40 });
    const below = freePlace(table, { ...sheet, isFree: (row) => row > 8 });
    expect(below).toMatchObject({ left: 100, top: 196 });
    const further = freePlace(table, { ...sheet, isFree: (_, column) => column > 4 });
    expect(further).toMatchObject({ left: 516, top: 40 });
    const second = freePlace(table, { ...sheet, taken: [beside], isFree: (row) => row < 20 });
    expect(second.left).toBeGreaterThanOrEqual(beside.left + beside.width);
    const last = freePlace(table, { ...sheet, isFree: (row) => row > 20 });
    expect(last).toMatchObject({ left: 100, top: 436 });
  });
});
