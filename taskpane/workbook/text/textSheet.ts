import { BooleanNumber, type ICellData, type IStyleData, type IWorksheetData } from '../engine/core.js';
import { textCell } from '../grid/cells.js';
import { entryCell } from '../grid/entryCell.js';
import { COLUMNS, ROWS, shapeData } from '../grid/workbookData.js';
import { LIMITS } from '../xlsx/limits.js';
import type { Table } from './understand.js';

const NARROW = 9;
const WIDE = 40;
/** Rows that a column's width is made for. */
const LOOKED_AT = 200;
/** More rows in view throughout would leave the others no room. */
const MOST_FROZEN = 6;

/** The rows as a sheet that the grid takes in: titles bold and in view, figures with their formats, no formulas. */
export function textSheet(rows: readonly (readonly string[])[], table: Table): Partial<IWorksheetData> {
  const { headerRows, columns } = table;
  // Each look once: thousands of cells share the same few.
  const looks = new Map<string, IStyleData>();
  const title: IStyleData = { bl: BooleanNumber.TRUE };
  const shared = (style: ICellData['s']): { s?: IStyleData } => {
    if (!style || typeof style === 'string') return {};
    const key = JSON.stringify(style);
    const look = looks.get(key) ?? style;
    looks.set(key, look);
    return { s: look };
  };
  const cellOf = (text: string, row: number, column: number): ICellData => {
    const entry = table.figure(row, column);
    if (!entry) return { ...textCell(text.slice(0, LIMITS.text)), ...(row < headerRows ? { s: title } : {}) };
    const { v, t, s } = entryCell(entry, text, undefined);
    return { v: v ?? null, t: t ?? null, ...shared(s) };
  };
  const cellData = Object.fromEntries(
    rows.map((row, r) => [
      r,
      Object.fromEntries(row.flatMap((text, c) => (text === '' ? [] : [[c, cellOf(text, r, c)]]))),
    ]),
  );
  const widths = columns.map((_, column) =>
    rows
      .slice(0, LOOKED_AT)
      .reduce((most, row) => Math.max(most, Math.min(WIDE, (row[column]?.length ?? 0) + 1)), NARROW),
  );
  return {
    cellData,
    rowCount: Math.max(ROWS, rows.length),
    columnCount: Math.max(COLUMNS, columns.length),
    ...shapeData({ widths, headerRows: headerRows <= MOST_FROZEN ? headerRows : 0 }),
  };
}
