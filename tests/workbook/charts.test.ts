import { afterEach, describe, expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { starterSheets } from '../../src/sheets/index.js';
import { chartsOf, readCharts } from '../../taskpane/workbook/grid/charts.js';
import { copyWithValues } from '../../taskpane/workbook/grid/copyWithValues.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { insertStarter } from '../../taskpane/workbook/grid/sheets.js';
import { type Calculated, calculateStarter } from './headless.js';

let book: Calculated;
afterEach(() => book.dispose());

const ranges = (charts: ReturnType<typeof chartsOf>) =>
  charts.map(({ series }) => series.map(({ across, upwards }) => [across, upwards]));
const shown = () => workbookOf(book.grid).getActiveSheet();

describe('the charts of a sheet in the grid', () => {
  it.each(starterSheets)('are those of $name, range for range', async (starter) => {
    book = await calculateStarter(starter);
    expect(ranges(chartsOf(shown()))).toEqual(ranges(starter.charts ?? []));
  });

  it('read what their cells show', async () => {
    book = await calculateStarter(dosing);
    const [chart] = readCharts(book.grid);
    expect(chart?.title).toBe(dosing.charts?.[0]?.title);
    for (const { across, upwards } of chart?.series ?? []) {
      expect(across.length).toBe(11);
      expect(upwards.every((value) => typeof value === 'number' && value > 0)).toBe(true);
    }
  });

  it('follow their cells when rows and columns are put in before them', async () => {
    book = await calculateStarter(dosing);
    shown().insertRowsBefore(3, 2);
    shown().insertColumnsBefore(0, 1);
    const moved = (range: string) =>
      range.replace(/([A-Z])(\d+)/g, (_, letter: string, row: string) => {
        return `${String.fromCharCode(letter.charCodeAt(0) + 1)}${Number(row) + 2}`;
      });
    expect(ranges(chartsOf(shown()))).toEqual(
      ranges(dosing.charts ?? []).map((all) => all.map((pair) => pair.map(moved))),
    );
  });

  it('are each sheet’s own where there are two of a kind, and stay with a copy of values', async () => {
    book = await calculateStarter(dosing);
    const second = insertStarter(book.grid, dosing);
    expect(ranges(chartsOf(second))).toEqual(ranges(dosing.charts ?? []));
    const { name } = copyWithValues(book.grid, 'values');
    const copy = workbookOf(book.grid).getSheetByName(name);
    expect(copy && ranges(chartsOf(copy))).toEqual(ranges(dosing.charts ?? []));
  });

  it('are saved with the workbook', async () => {
    book = await calculateStarter(dosing);
    const [saved] = Object.values(JSON.parse(JSON.stringify(workbookOf(book.grid).save())).sheets) as [
      { custom: { charts: unknown } },
    ];
    expect(saved.custom.charts).toEqual(dosing.charts);
  });
});
