import { describe, expect, it } from 'vitest';
import { blankSheet, workbookData } from '../../taskpane/workbook/grid/workbookData.js';
import { isSaved, later, type Saved } from '../../taskpane/workbook/store/saved.js';

const at = (saved: string): Saved => ({ saved, workbook: workbookData(blankSheet('first', 'Sheet 1')) });
const early = at('2030-01-01T00:00:00.000Z');
const late = at('2030-01-01T00:00:01.000Z');

describe('a saved workbook', () => {
  it('is known as one after it went through storage', () => {
    expect(isSaved(JSON.parse(JSON.stringify(early)))).toBe(true);
  });

  it.each([
    ['nothing', undefined],
    ['text', 'workbook'],
    ['no date', { workbook: early.workbook }],
    ['no sheets', { ...early, workbook: { ...early.workbook, sheets: {} } }],
    ['no order', { ...early, workbook: { ...early.workbook, sheetOrder: [] } }],
    ['cells that are none', { ...early, workbook: { ...early.workbook, sheets: { first: { cellData: 'x' } } } }],
  ])('is not taken for one when it has %s', (_, damaged) => {
    expect(isSaved(damaged)).toBe(false);
  });

  it('gives way to what was kept at the last moment only where that is later and can be read', () => {
    expect(later(early, late)).toBe(late);
    expect(later(late, early)).toBe(late);
    expect(later(undefined, late)).toBe(late);
    expect(later(early, { saved: '2031', workbook: 'x' })).toBe(early);
    expect(later(undefined, undefined)).toBeUndefined();
  });
});
