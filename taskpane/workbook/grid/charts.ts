import type { ICellData, IObjectMatrixPrimitiveType, IWorksheetData } from '@univerjs/core';
import { deserializeRangeWithSheet, SetFormulaCalculationResultMutation } from '@univerjs/engine-formula';
import {
  InsertSheetMutation,
  RemoveSheetMutation,
  SetRangeValuesMutation,
  SetWorksheetActiveOperation,
} from '@univerjs/sheets';
import type { FWorksheet } from '@univerjs/sheets/facade';
import type { SheetChart } from '../../../src/sheets/sheet.js';
import type { CellContent, ShownChart } from '../../host/host.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { MOVES } from './moves.js';
import { address, shownAt, workbookOf } from './place.js';

type Matrix = IObjectMatrixPrimitiveType<ICellData>;

/**
 * The charts of a sheet travel with it. Their ranges are marks in the cells themselves: these move with the cells,
 * stay when the sheet is renamed or saved, and a second copy of the sheet has its own.
 */
export function withCharts(sheet: Partial<IWorksheetData>, charts: readonly SheetChart[]): Partial<IWorksheetData> {
  if (charts.length === 0) return sheet;
  const cells: Matrix = { ...sheet.cellData };
  charts.forEach(({ series }, chart) => {
    series.forEach(({ across, upwards }, index) => {
      mark(cells, across, `${chart}.${index}.across`);
      mark(cells, upwards, `${chart}.${index}.upwards`);
    });
  });
  return { ...sheet, cellData: cells, custom: { ...sheet.custom, charts } };
}

function mark(cells: Matrix, range: string, key: string): void {
  const { startRow, endRow, startColumn, endColumn } = deserializeRangeWithSheet(range).range;
  for (let row = startRow; row <= endRow; row++) {
    cells[row] = { ...cells[row] };
    const line = cells[row] as Record<number, ICellData>;
    for (let column = startColumn; column <= endColumn; column++) {
      const { custom, ...rest } = line[column] ?? {};
      line[column] = { ...rest, custom: { ...custom, drawn: [...(custom?.drawn ?? []), key] } };
    }
  }
}

type Place = readonly [row: number, column: number];

/** Where the marks stand now, each in the order of its cells. */
function markedCells(sheet: FWorksheet): ReadonlyMap<string, readonly Place[]> {
  const found = new Map<string, Place[]>();
  sheet
    .getSheet()
    .getCellMatrix()
    .forValue((row, column, cell) => {
      for (const key of (cell?.custom?.drawn ?? []) as string[]) {
        const places = found.get(key) ?? [];
        // What was copied elsewhere takes its marks along; the chart keeps to the column where it began.
        if (places.length === 0 || places[0]?.[1] === column) places.push([row, column]);
        found.set(key, places);
      }
    });
  return found;
}

const chartsOn = (sheet: FWorksheet): readonly SheetChart[] => sheet.getSheet().getConfig().custom?.charts ?? [];

/** The charts of a sheet with the ranges as they are now, for whoever writes the workbook elsewhere. */
export function chartsOf(sheet: FWorksheet): readonly SheetChart[] {
  const cells = markedCells(sheet);
  const rangeOf = (key: string): string | undefined => {
    const [first, last] = [cells.get(key)?.[0], cells.get(key)?.at(-1)];
    return first && last ? address(...first, ...last) : undefined;
  };
  return chartsOn(sheet).map((chart, index) => ({
    ...chart,
    series: chart.series.flatMap((one, at) => {
      const [across, upwards] = ['across', 'upwards'].map((what) => rangeOf(`${index}.${at}.${what}`));
      return across && upwards ? [{ ...one, across, upwards }] : [];
    }),
  }));
}

/** The charts of the shown sheet with what their cells show. */
export function readCharts(grid: Grid): readonly ShownChart[] {
  const sheet = workbookOf(grid).getActiveSheet();
  const charts = chartsOn(sheet);
  if (charts.length === 0) return [];
  const cells = markedCells(sheet);
  const values = (key: string): CellContent[] =>
    (cells.get(key) ?? []).map(([row, column]) => contentOf(shownAt(grid, sheet, row, column).cell));
  return charts.map(({ place: _, ...chart }, index) => ({
    ...chart,
    series: chart.series.map((one, at) => ({
      ...one,
      across: values(`${index}.${at}.across`),
      upwards: values(`${index}.${at}.upwards`),
    })),
  }));
}

const CHANGES = new Set<string>([
  ...MOVES,
  InsertSheetMutation.id,
  RemoveSheetMutation.id,
  SetFormulaCalculationResultMutation.id,
  SetRangeValuesMutation.id,
  SetWorksheetActiveOperation.id,
]);

/** Long enough for a calculation's results to be in place. */
const PAUSE = 100;

/** Calls the listener with the charts of the shown sheet whenever they have changed. */
export function watchCharts(grid: Grid, listener: (charts: readonly ShownChart[]) => void): () => void {
  let last = '';
  let waiting = 0;
  const look = () => {
    waiting = 0;
    const charts = readCharts(grid);
    const text = JSON.stringify(charts);
    if (text === last) return;
    last = text;
    listener(charts);
  };
  const subscription = workbookOf(grid).onCommandExecuted(({ id }) => {
    if (!CHANGES.has(id)) return;
    window.clearTimeout(waiting);
    waiting = window.setTimeout(look, PAUSE);
  });
  look();
  return () => {
    window.clearTimeout(waiting);
    subscription.dispose();
  };
}
