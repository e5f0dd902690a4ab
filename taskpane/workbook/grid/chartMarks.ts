import type { SheetChart } from '../../../src/sheets/sheet.js';
import { a1 } from '../../host/a1.js';
import type { ICellData, IObjectMatrixPrimitiveType, IRange, IWorksheetData, Nullable } from '../engine/core.js';
import { deserializeRangeWithSheet } from '../engine/formula.js';
import { address } from './place.js';

const RANGES = ['across', 'upwards', 'named'] as const;

type Matrix = IObjectMatrixPrimitiveType<ICellData>;
type Place = readonly [row: number, column: number];

const rangeOf = (range: string): IRange => deserializeRangeWithSheet(range).range;

function* cellsIn({ startRow, endRow, startColumn, endColumn }: IRange): Generator<Place> {
  for (let row = startRow; row <= endRow; row += 1)
    for (let column = startColumn; column <= endColumn; column += 1) yield [row, column];
}

/** A chart stands where its first row and its first column are, as long as one cell of each is there. */
function* edgeOf({ startRow, endRow, startColumn, endColumn }: IRange): Generator<Place> {
  yield* cellsIn({ startRow, endRow: startRow, startColumn, endColumn });
  yield* cellsIn({ startRow: startRow + 1, endRow, startColumn, endColumn: startColumn });
}

/** Every cell that charts read or stand on, with the key of its mark. */
function* marksOf(charts: readonly SheetChart[]): Generator<readonly [Place, key: string]> {
  for (const [chart, { series, place }] of charts.entries()) {
    for (const [index, one] of series.entries())
      for (const what of RANGES) {
        const range = one[what];
        if (range) for (const cell of cellsIn(rangeOf(range))) yield [cell, `${chart}.${index}.${what}`];
      }
    for (const cell of edgeOf(rangeOf(place))) yield [cell, `${chart}.place`];
  }
}

const marked = ({ custom, ...rest }: ICellData, key: string): ICellData => ({
  ...rest,
  custom: { ...custom, drawn: [...(custom?.drawn ?? []), key] },
});

/**
 * The charts of a sheet travel with it. Their ranges are marks in the cells themselves: these move with the cells,
 * stay when the sheet is renamed or saved, and a second copy of the sheet has its own.
 */
export function withCharts(sheet: Partial<IWorksheetData>, charts: readonly SheetChart[]): Partial<IWorksheetData> {
  if (charts.length === 0) return sheet;
  const cells: Matrix = Object.fromEntries(
    Object.entries(sheet.cellData ?? {}).map(([row, line]) => [row, { ...(line as object) }]),
  );
  for (const [[row, column], key] of marksOf(charts)) {
    cells[row] ??= {};
    const line = cells[row] as Record<number, ICellData>;
    line[column] = marked(line[column] ?? {}, key);
  }
  return { ...sheet, cellData: cells, custom: { ...sheet.custom, charts } };
}

/** The part of a sheet of the engine that charts need. */
interface Sheet {
  getConfig(): IWorksheetData;
  getCellMatrix(): {
    forValue(each: (row: number, column: number, cell: Nullable<ICellData>) => void): unknown;
    getValue(row: number, column: number): Nullable<ICellData>;
    setValue(row: number, column: number, cell: ICellData): void;
  };
}

/** Gives a sheet these charts in the place of those that it has. */
export function setCharts(sheet: Sheet, charts: readonly SheetChart[]): void {
  const cells = sheet.getCellMatrix();
  const before: [row: number, column: number, cell: ICellData][] = [];
  cells.forValue((row, column, cell) => {
    if (cell?.custom?.drawn) before.push([row, column, cell]);
  });
  for (const [row, column, { custom, ...rest }] of before) {
    const { drawn: _, ...others } = custom ?? {};
    cells.setValue(row, column, Object.keys(others).length > 0 ? { ...rest, custom: others } : rest);
  }
  for (const [[row, column], key] of marksOf(charts))
    cells.setValue(row, column, marked(cells.getValue(row, column) ?? {}, key));
  const config = sheet.getConfig();
  config.custom = { ...config.custom, charts };
}

/** The keys of ranges that are a row instead of a column. */
function levelOf(charts: readonly SheetChart[]): ReadonlySet<string> {
  const keys = charts.flatMap(({ series }, chart) =>
    series.flatMap((one, index) =>
      RANGES.flatMap((what) => {
        const { startRow, endRow, startColumn, endColumn } = rangeOf(one[what] ?? 'A1');
        return startRow === endRow && startColumn < endColumn ? [`${chart}.${index}.${what}`] : [];
      }),
    ),
  );
  return new Set(keys);
}

/** Where the marks stand now, each in the order of its cells. */
function markedCells(sheet: Sheet, charts: readonly SheetChart[]): ReadonlyMap<string, readonly Place[]> {
  const found = new Map<string, Place[]>();
  const level = levelOf(charts);
  sheet.getCellMatrix().forValue((row, column, cell) => {
    for (const key of (cell?.custom?.drawn ?? []) as string[]) {
      const places = found.get(key) ?? [];
      // What was copied elsewhere takes its marks along; the chart keeps to the column or row where it began.
      const axis = level.has(key) ? 0 : 1;
      if (places.length === 0 || key.endsWith('.place') || places[0]?.[axis] === [row, column][axis])
        places.push([row, column]);
      found.set(key, places);
    }
  });
  return found;
}

/** A rectangle of the same size from the first of these rows and columns on. */
function movedTo(place: string, edge: readonly Place[] | undefined): string {
  if (!edge) return place;
  const row = Math.min(...edge.map(([one]) => one));
  const column = Math.min(...edge.map(([, one]) => one));
  const { startRow, endRow, startColumn, endColumn } = rangeOf(place);
  return `${a1(row, column)}:${a1(row + endRow - startRow, column + endColumn - startColumn)}`;
}

/** The charts of a sheet with their ranges and places as they are now. */
export function chartsOf(sheet: Sheet): readonly SheetChart[] {
  const charts: readonly SheetChart[] = sheet.getConfig().custom?.charts ?? [];
  if (charts.length === 0) return [];
  const cells = markedCells(sheet, charts);
  const now = (key: string): string | undefined => {
    const [first, last] = [cells.get(key)?.[0], cells.get(key)?.at(-1)];
    return first && last ? address(...first, ...last) : undefined;
  };
  return charts.map((chart, index) => ({
    ...chart,
    place: movedTo(chart.place, cells.get(`${index}.place`)),
    series: chart.series.flatMap(({ named: _, ...one }, at) => {
      const [across, upwards, named] = RANGES.map((what) => now(`${index}.${at}.${what}`));
      return across && upwards ? [{ ...one, ...(named ? { named } : {}), across, upwards }] : [];
    }),
  }));
}
