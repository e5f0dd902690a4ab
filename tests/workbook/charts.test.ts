import { afterEach, describe, expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { starterSheets } from '../../src/sheets/index.js';
import type { FWorksheet } from '../../taskpane/workbook/engine/facade.js';
import { changeCharts } from '../../taskpane/workbook/grid/chartChanges.js';
import { chartsOf as chartsIn } from '../../taskpane/workbook/grid/chartMarks.js';
import { readCharts } from '../../taskpane/workbook/grid/charts.js';
import { copyWithValues } from '../../taskpane/workbook/grid/copyWithValues.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { insertStarter } from '../../taskpane/workbook/grid/sheets.js';
import { type Calculated, calculateStarter } from './headless.js';

let book: Calculated;
afterEach(() => book.dispose());

const chartsOf = (sheet: FWorksheet) => chartsIn(sheet.getSheet());
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

  it('draw rows that are put in between, and stay when the row goes that they begin in', async () => {
    book = await calculateStarter(dosing);
    const before = chartsOf(shown())[0];
    const row = Number(/\d+/.exec(before?.place ?? '')?.[0]);
    shown().deleteRow(row - 1);
    const after = chartsOf(shown())[0];
    expect(Number(/\d+/.exec(after?.place ?? '')?.[0])).toBe(row);
    expect(after?.series.length).toBe(before?.series.length);
  });

  it('are changed by one step that can be taken back', async () => {
    book = await calculateStarter(dosing);
    const before = chartsOf(shown());
    changeCharts(book.grid, (charts) => charts.map((chart) => ({ ...chart, place: 'K40:M50' })));
    shown().insertRowsBefore(3, 2);
    expect(chartsOf(shown())[0]?.place).toBe('K42:M52');
    workbookOf(book.grid).undo();
    workbookOf(book.grid).undo();
    expect(chartsOf(shown())).toEqual(before);
    workbookOf(book.grid).redo();
    expect(chartsOf(shown())[0]?.place).toBe('K40:M50');
    changeCharts(book.grid, () => []);
    expect(readCharts(book.grid)).toEqual([]);
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
