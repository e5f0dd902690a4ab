import type { SheetChart } from '../../../src/sheets/sheet.js';
import { a1 } from '../../host/a1.js';
import type { CellContent, ShownChart } from '../../host/host.js';
import type { ICellData, IObjectMatrixPrimitiveType, IWorksheetData } from '../engine/core.js';
import type { FWorksheet } from '../engine/facade.js';
import { deserializeRangeWithSheet, SetFormulaCalculationResultMutation } from '../engine/formula.js';
import {
  InsertSheetMutation,
  RemoveSheetMutation,
  SetRangeValuesMutation,
  SetWorksheetActiveOperation,
} from '../engine/sheets.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { MOVES } from './moves.js';
import { address, shownAt, workbookOf } from './place.js';

const RANGES = ['across', 'upwards', 'named'] as const;

const cornerOf = (place: string): string => place.split(':')[0] as string;

type Matrix = IObjectMatrixPrimitiveType<ICellData>;

/**
 * The charts of a sheet travel with it. Their ranges are marks in the cells themselves: these move with the cells,
 * stay when the sheet is renamed or saved, and a second copy of the sheet has its own.
 */
export function withCharts(sheet: Partial<IWorksheetData>, charts: readonly SheetChart[]): Partial<IWorksheetData> {
  if (charts.length === 0) return sheet;
  const cells: Matrix = { ...sheet.cellData };
  charts.forEach(({ series, place }, chart) => {
    series.forEach((one, index) => {
      for (const what of RANGES) {
        const range = one[what];
        if (range) mark(cells, range, `${chart}.${index}.${what}`);
      }
    });
    mark(cells, cornerOf(place), `${chart}.place`);
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

/** The keys of ranges that are a row instead of a column. */
function levelOf(charts: readonly SheetChart[]): ReadonlySet<string> {
  const keys = charts.flatMap(({ series }, chart) =>
    series.flatMap((one, index) =>
      RANGES.flatMap((what) => {
        const { startRow, endRow, startColumn, endColumn } = deserializeRangeWithSheet(one[what] ?? 'A1').range;
        return startRow === endRow && startColumn < endColumn ? [`${chart}.${index}.${what}`] : [];
      }),
    ),
  );
  return new Set(keys);
}

/** Where the marks stand now, each in the order of its cells. */
function markedCells(sheet: FWorksheet): ReadonlyMap<string, readonly Place[]> {
  const found = new Map<string, Place[]>();
  const level = levelOf(chartsOn(sheet));
  sheet
    .getSheet()
    .getCellMatrix()
    .forValue((row, column, cell) => {
      for (const key of (cell?.custom?.drawn ?? []) as string[]) {
        const places = found.get(key) ?? [];
        // What was copied elsewhere takes its marks along; the chart keeps to the column or row where it began.
        const axis = level.has(key) ? 0 : 1;
        if (places.length === 0 || places[0]?.[axis] === [row, column][axis]) places.push([row, column]);
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
    place: movedTo(chart.place, cells.get(`${index}.place`)?.[0]),
    series: chart.series.flatMap(({ named: _, ...one }, at) => {
      const [across, upwards, named] = RANGES.map((what) => rangeOf(`${index}.${at}.${what}`));
      return across && upwards ? [{ ...one, ...(named ? { named } : {}), across, upwards }] : [];
    }),
  }));
}

/** A rectangle of the same size from another corner on. */
function movedTo(place: string, corner: Place | undefined): string {
  if (!corner) return place;
  const [row, column] = corner;
  const { startRow, endRow, startColumn, endColumn } = deserializeRangeWithSheet(place).range;
  return `${a1(row, column)}:${a1(row + endRow - startRow, column + endColumn - startColumn)}`;
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
    series: chart.series.map(({ named: _, ...one }, at) => ({
      ...one,
      name: String(values(`${index}.${at}.named`)[0] ?? one.name),
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
