import { columnLetters } from '../../host/a1.js';
import type { ICellData, IObjectMatrixPrimitiveType, IRange, IWorksheetData } from '../engine/core.js';
import { deserializeRangeWithSheet } from '../engine/formula.js';
import type { PageSetup } from '../xlsx/pageSetup.js';
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

/** Each range by the key of its marks. Rows and columns are marked where they begin. */
function rangesOf({ areas = [], rows, columns }: PageSetup): Map<string, IRange> {
  const ranges = new Map(areas.map((one, n) => [`area ${n}`, deserializeRangeWithSheet(one).range]));
  const [from, to] = (rows ?? '').split(':').map((row) => Number(row) - 1);
  if (from !== undefined && to !== undefined)
    ranges.set('rows', { startRow: from, endRow: to, startColumn: 0, endColumn: 0 });
  const [left, right] = (columns ?? '').split(':').map((letters) => (letters ? `${letters}1` : ''));
  if (left && right) ranges.set('columns', deserializeRangeWithSheet(`${left}:${right}`).range);
  return ranges;
}

/** What is printed and repeated moves with the cells, since these bear marks. */
export function withPrinted(sheet: Partial<IWorksheetData>, page: PageSetup | undefined): Partial<IWorksheetData> {
  const ranges = rangesOf(page ?? {});
  if (ranges.size === 0) return sheet;
  const cells: Matrix = { ...sheet.cellData };
  for (const [key, range] of ranges) {
    for (const [row, column] of edgeOf(range)) {
      cells[row] = { ...cells[row] };
      const line = cells[row] as Record<number, ICellData>;
      const { custom, ...rest } = line[column] ?? {};
      line[column] = { ...rest, custom: { ...custom, printed: [...(custom?.printed ?? []), key] } };
    }
  }
  return { ...sheet, cellData: cells };
}

/** Where the marks of a sheet stand now. */
function markedRanges(cellData: Matrix): ReadonlyMap<string, IRange> {
  const found = new Map<string, IRange>();
  for (const [r, line] of Object.entries(cellData)) {
    for (const [c, cell] of Object.entries((line ?? {}) as Record<string, ICellData>)) {
      const [row, column] = [Number(r), Number(c)];
      for (const key of (cell?.custom?.printed ?? []) as string[]) {
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
  return found;
}

/** The set-up of a sheet's print with what is printed and repeated as it stands now; what was deleted is gone. */
export function printedNow(page: PageSetup, cellData: Matrix): PageSetup {
  const { areas: _, rows: __, columns: ___, ...rest } = page;
  const marked = markedRanges(cellData);
  const areas = (page.areas ?? []).flatMap((_one, n) => {
    const range = marked.get(`area ${n}`);
    return range ? [address(range.startRow, range.startColumn, range.endRow, range.endColumn)] : [];
  });
  const [rows, columns] = [marked.get('rows'), marked.get('columns')];
  return {
    ...rest,
    ...(areas.length > 0 ? { areas } : {}),
    ...(rows ? { rows: `${rows.startRow + 1}:${rows.endRow + 1}` } : {}),
    ...(columns ? { columns: `${columnLetters(columns.startColumn)}:${columnLetters(columns.endColumn)}` } : {}),
  };
}
