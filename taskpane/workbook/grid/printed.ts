import { a1, columnLetters } from '../../host/a1.js';
import type { ICellData, IObjectMatrixPrimitiveType, IRange, IWorksheetData } from '../engine/core.js';
import { deserializeRangeWithSheet } from '../engine/formula.js';
import type { PageSetup } from '../xlsx/pageSetup.js';
import { COLUMNS, ROWS } from '../xlsx/printed.js';
import { address } from './place.js';

type Matrix = IObjectMatrixPrimitiveType<ICellData>;
type Place = readonly [row: number, column: number];

/** The cells at the edge of a range: as long as one of each side is there, the range is known. */
function* edgeOf({ startRow, endRow, startColumn, endColumn }: IRange): Generator<Place> {
  for (let row = startRow; row <= endRow; row += 1)
    for (const column of new Set([startColumn, endColumn])) yield [row, column];
  for (let column = startColumn + 1; column < endColumn; column += 1)
    for (const row of new Set([startRow, endRow])) yield [row, column];
}

/** The cells that are marked for a place: of whole rows and columns those where they begin. */
function marked(place: string): IRange {
  const [first = '', last = ''] = place.split(':');
  if (ROWS.test(place)) return { startRow: Number(first) - 1, endRow: Number(last) - 1, startColumn: 0, endColumn: 0 };
  return deserializeRangeWithSheet(COLUMNS.test(place) ? `${first}1:${last}1` : place).range;
}

const [ROW_BREAK, COLUMN_BREAK] = ['row break', 'column break'] as const;

/** The cells of each range or line, by the key of their marks. */
function rangesOf({ areas = [], rows, columns, rowBreaks = [], columnBreaks = [] }: PageSetup): [string, IRange][] {
  return [
    ...areas.map((one, n): [string, IRange] => [`area ${n}`, marked(one)]),
    ...(rows ? [['rows', marked(rows)] as [string, IRange]] : []),
    ...(columns ? [['columns', marked(columns)] as [string, IRange]] : []),
    ...rowBreaks.map((row): [string, IRange] => [ROW_BREAK, marked(`${row + 1}:${row + 1}`)]),
    ...columnBreaks.map((column): [string, IRange] => [COLUMN_BREAK, marked(a1(0, column))]),
  ];
}

/** What is printed and repeated moves with the cells, since these bear marks. */
export function withPrinted(sheet: Partial<IWorksheetData>, page: PageSetup | undefined): Partial<IWorksheetData> {
  const ranges = rangesOf(page ?? {});
  if (ranges.length === 0) return sheet;
  const cells: Matrix = { ...sheet.cellData };
  let { rowCount = 0, columnCount = 0 } = sheet;
  for (const [key, range] of ranges) {
    rowCount = Math.max(rowCount, range.endRow + 1);
    columnCount = Math.max(columnCount, range.endColumn + 1);
    for (const [row, column] of edgeOf(range)) {
      cells[row] = { ...cells[row] };
      const line = cells[row] as Record<number, ICellData>;
      const { custom, ...rest } = line[column] ?? {};
      line[column] = { ...rest, custom: { ...custom, printed: [...(custom?.printed ?? []), key] } };
    }
  }
  return { ...sheet, rowCount, columnCount, cellData: cells };
}

interface Marked {
  /** The range around all marks of a key. */
  readonly ranges: ReadonlyMap<string, IRange>;
  readonly rowBreaks: readonly number[];
  readonly columnBreaks: readonly number[];
}

/** Where the marks of a sheet stand now. */
function markedRanges(cellData: Matrix): Marked {
  const found = new Map<string, IRange>();
  const [rowBreaks, columnBreaks] = [new Set<number>(), new Set<number>()];
  for (const [r, line] of Object.entries(cellData)) {
    for (const [c, cell] of Object.entries((line ?? {}) as Record<string, ICellData>)) {
      const [row, column] = [Number(r), Number(c)];
      for (const key of (cell?.custom?.printed ?? []) as string[]) {
        if (key === ROW_BREAK) rowBreaks.add(row);
        if (key === COLUMN_BREAK) columnBreaks.add(column);
        const { startRow, endRow, startColumn, endColumn } = found.get(key) ?? {
          ...{ startRow: row, endRow: row, startColumn: column, endColumn: column },
        };
        found.set(key, {
          ...{ startRow: Math.min(row, startRow), endRow: Math.max(row, endRow) },
          ...{ startColumn: Math.min(column, startColumn), endColumn: Math.max(column, endColumn) },
        });
      }
    }
  }
  // In front of the first row or column no page ends.
  const ascending = (places: ReadonlySet<number>) =>
    [...places].filter((one) => one > 0).sort((one, other) => one - other);
  return { ranges: found, rowBreaks: ascending(rowBreaks), columnBreaks: ascending(columnBreaks) };
}

/** The place around marks in the form that it had: whole rows, whole columns, or cells. */
function placeNow(form: string, { startRow, startColumn, endRow, endColumn }: IRange): string {
  if (ROWS.test(form)) return `${startRow + 1}:${endRow + 1}`;
  if (COLUMNS.test(form)) return `${columnLetters(startColumn)}:${columnLetters(endColumn)}`;
  return address(startRow, startColumn, endRow, endColumn);
}

/** The last row in which something is filled in beside what is said of it, in the columns of a place. */
function filledTo(cellData: Matrix, { startColumn, endColumn }: IRange): number {
  const isFilled = (cell: ICellData | undefined) =>
    cell?.v !== undefined && cell.v !== null && cell.v !== '' && cell.v !== 0;
  const filled = Object.entries(cellData).filter(([, line]) =>
    Object.entries((line ?? {}) as Record<string, ICellData>).some(
      ([column, cell]) => Number(column) > startColumn && Number(column) <= endColumn && isFilled(cell),
    ),
  );
  return Math.max(-1, ...filled.map(([row]) => Number(row)));
}

/** The set-up of a sheet's print with what is printed and repeated as it stands now; what was deleted is gone. */
export function printedNow(page: PageSetup, cellData: Matrix): PageSetup {
  const { areas: _, rows: __, columns: ___, rowBreaks: ____, columnBreaks: _____, ...rest } = page;
  const { ranges, rowBreaks, columnBreaks } = markedRanges(cellData);
  const last = `area ${(page.areas ?? []).length - 1}`;
  const list = page.grows && ranges.get(last);
  const all = list
    ? new Map([...ranges, [last, { ...list, endRow: Math.max(list.endRow, filledTo(cellData, list)) }]])
    : ranges;
  const now = (form: string | undefined, key: string): string | undefined => {
    const range = all.get(key);
    return form && range && placeNow(form, range);
  };
  const areas = (page.areas ?? []).flatMap((form, n) => now(form, `area ${n}`) ?? []);
  const [rows, columns] = [now(page.rows, 'rows'), now(page.columns, 'columns')];
  return {
    ...rest,
    ...(areas.length > 0 ? { areas } : {}),
    ...(rows ? { rows } : {}),
    ...(columns ? { columns } : {}),
    ...(rowBreaks.length > 0 ? { rowBreaks } : {}),
    ...(columnBreaks.length > 0 ? { columnBreaks } : {}),
  };
}
