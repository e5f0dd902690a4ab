import { areaOf } from '../../../src/sheets/area.js';
import type { ShownChart } from '../../host/shownChart.js';
import type { Alignment, BookLook } from '../xlsx/bookLook.js';
import { alignOfStyle, lookOfStyle } from './bookStyle.js';
import type { Grid } from './boot.js';
import { richText } from './cells.js';
import { readCharts } from './charts.js';
import { workbookOf } from './place.js';
import { widely } from './widely.js';

export interface PrintedCell {
  readonly text: string;
  readonly look: BookLook;
  readonly align: Alignment;
  readonly number: boolean;
}

/** One sheet as a page shows it: its titles, and its rows in parts that belong together. */
export interface PrintedSheet {
  readonly name: string;
  /** Width of each column in pixels of the sheet. */
  readonly widths: readonly number[];
  readonly titles: readonly PrintedRow[];
  readonly parts: readonly PrintedPart[];
  /** The charts in their order, each with the number of parts that begin before it does. */
  readonly charts: readonly { readonly after: number; readonly chart: ShownChart }[];
}
export interface PrintedPart {
  /** Where it begins among all printed rows. */
  readonly from: number;
  readonly rows: readonly PrintedRow[];
}
export type PrintedRow = readonly PrintedCell[];

const isEmpty = (row: PrintedRow) => row.every(({ text }) => text === '');

/** Rows up to the next empty one are a part; pages are broken between parts. */
export function partsOf(rows: readonly PrintedRow[]): readonly PrintedPart[] {
  const parts: { from: number; rows: PrintedRow[] }[] = [];
  let open = false;
  for (const [from, row] of rows.entries()) {
    if (isEmpty(row)) open = false;
    else if (open) parts.at(-1)?.rows.push(row);
    else {
      parts.push({ from, rows: [row] });
      open = true;
    }
  }
  return parts;
}

/** The sheet that is shown, from its first cell to its last; hidden rows and columns are left out. */
export function pageOfSheet(grid: Grid): PrintedSheet {
  const shown = workbookOf(grid).getActiveSheet();
  const sheet = shown.getSheet();
  const columns = Array.from({ length: shown.getLastColumn() + 1 }, (_, column) => column).filter((column) =>
    sheet.getColVisible(column),
  );
  const cellAt = (row: number, column: number): PrintedCell => {
    const cell = sheet.getCell(row, column);
    const style = sheet.getComposedCellStyle(row, column);
    const text = richText(cell) ?? String(cell?.v ?? '');
    const number = typeof sheet.getCellRaw(row, column)?.v === 'number';
    return { text, look: lookOfStyle(style), align: alignOfStyle(style), number };
  };
  const seen = Array.from({ length: shown.getLastRow() + 1 }, (_, row) => row).filter((row) =>
    sheet.getRowVisible(row),
  );
  const rows = widely(() => seen.map((row) => columns.map((column) => cellAt(row, column))));
  const frozen = Math.max(0, shown.getFreeze().ySplit);
  const parts = partsOf(rows.slice(frozen));
  const charts = readCharts(grid).map((chart) => {
    const { row } = areaOf(chart.place);
    return { after: parts.filter(({ from }) => (seen[from + frozen] ?? 0) <= row).length, chart };
  });
  return {
    name: shown.getSheetName(),
    widths: columns.map((column) => shown.getColumnWidth(column)),
    titles: rows.slice(0, frozen),
    parts,
    charts,
  };
}
