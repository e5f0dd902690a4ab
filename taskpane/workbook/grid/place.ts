import {
  CellValueType,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IRange,
  type IWorkbookData,
  type Nullable,
} from '../engine/core.js';
import type { FRange, FWorkbook, FWorksheet } from '../engine/facade.js';
import { FormulaDataModel, serializeRange } from '../engine/formula.js';
import { servicesOf } from '../engine/services.js';
import type { Grid } from './boot.js';
import { hasFormula } from './cells.js';

export function workbookOf({ api }: Grid): FWorkbook {
  const workbook = api.getActiveWorkbook();
  if (!workbook) throw new Error('The workbook is not open.');
  return workbook;
}

/** All that is to be kept, also of parts of the engine that are still to load. */
export function savedWorkbook(grid: Grid): IWorkbookData {
  const workbook = workbookOf(grid);
  const saved = workbook.save();
  const resources = saved.resources ?? [];
  const waiting = (workbook.getWorkbook().getSnapshot().resources ?? []).filter(
    ({ name }) => !resources.some((one) => one.name === name),
  );
  return { ...saved, resources: [...resources, ...waiting] };
}

/** The selected cell; the first one as long as nothing was selected. */
export function activeCell(grid: Grid): FRange {
  const workbook = workbookOf(grid);
  return workbook.getActiveCell() ?? workbook.getActiveSheet().getRange(0, 0);
}

export const address = (row: number, column: number, lastRow = row, lastColumn = column) =>
  serializeRange({ startRow: row, startColumn: column, endRow: lastRow, endColumn: lastColumn });

interface Shown {
  readonly cell: Nullable<ICellData>;
  /** The cell whose formula fills this one, and how far from it this one lies. */
  readonly origin?: { readonly row: number; readonly column: number };
}

/** What a cell shows: its own content, or a part of an answer that spilled into it. */
export function shownAt(grid: Grid, sheet: FWorksheet, row: number, column: number): Shown {
  const own = sheet.getSheet().getCellRaw(row, column);
  if (hasFormula(own)) return { cell: own, origin: { row, column } };
  const model = servicesOf(grid.univer).get(FormulaDataModel);
  const unit = workbookOf(grid).getId();
  const spilled = model.getArrayFormulaCellData()[unit]?.[sheet.getSheetId()]?.[row]?.[column];
  if (!spilled || (own?.v !== undefined && own.v !== null && own.v !== '')) return { cell: own };
  const ranges: IObjectMatrixPrimitiveType<IRange> = model.getArrayFormulaRange()[unit]?.[sheet.getSheetId()] ?? {};
  for (const [top, columns] of Object.entries(ranges)) {
    for (const [left, range] of Object.entries(columns as Record<string, IRange>)) {
      const within = row >= range.startRow && row <= range.endRow && column >= range.startColumn;
      if (within && column <= range.endColumn) {
        return { cell: spilled, origin: { row: Number(top), column: Number(left) } };
      }
    }
  }
  return { cell: spilled };
}

/** The ranges that answers of several cells fill. */
export function spilledRanges(grid: Grid, sheet: FWorksheet): readonly IRange[] {
  const model = servicesOf(grid.univer).get(FormulaDataModel);
  const rows = model.getArrayFormulaRange()[workbookOf(grid).getId()]?.[sheet.getSheetId()] ?? {};
  return Object.values(rows).flatMap((columns) => Object.values((columns ?? {}) as Record<string, IRange>));
}

/** Every cell that an answer of several cells fills, with the part of the answer in it. */
export function spilledCells(grid: Grid, sheet: FWorksheet): [row: number, column: number, cell: ICellData][] {
  const model = servicesOf(grid.univer).get(FormulaDataModel);
  const rows = model.getArrayFormulaCellData()[workbookOf(grid).getId()]?.[sheet.getSheetId()] ?? {};
  return Object.entries(rows).flatMap(([row, columns]) =>
    Object.entries((columns ?? {}) as Record<string, Nullable<ICellData>>).flatMap(([column, cell]) =>
      cell ? [[Number(row), Number(column), cell] as [number, number, ICellData]] : [],
    ),
  );
}

export const isErrorCell = (cell: Nullable<ICellData>) =>
  typeof cell?.v === 'string' && cell.t !== CellValueType.FORCE_STRING && /^#[A-Z/0!?]+[!?A]$/.test(cell.v);
