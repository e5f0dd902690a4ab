import { copyName } from '../../host/sheetName.js';
import type { ICellData, IObjectMatrixPrimitiveType, IWorksheetData } from '../engine/core.js';
import type { Grid } from './boot.js';
import { spilledCells, workbookOf } from './place.js';

const MARKS: ReadonlySet<string> = new Set(['drawn', 'printed', 'remark']);

/**
 * A cell without its formula, and without the rule for what may be typed: nothing is calculated from it any more.
 * Notes and the marks of charts and of print stay, so that the copy is drawn and printed as well.
 */
function asValue({ f: _, si: __, custom, ...rest }: ICellData): ICellData {
  const stay = Object.entries(custom ?? {}).filter(([key]) => MARKS.has(key));
  return stay.length > 0 ? { ...rest, custom: Object.fromEntries(stay) } : rest;
}

/** A copy of the shown sheet beside it, with the values that its formulas show. Taken back by one undo. */
export function copyWithValues(grid: Grid, ending: string): { readonly name: string } {
  const workbook = workbookOf(grid);
  const source = workbook.getActiveSheet();
  const config: IWorksheetData = structuredClone(source.getSheet().getConfig());
  const cells: IObjectMatrixPrimitiveType<ICellData> = {};
  const put = (row: number, column: number, cell: ICellData) => {
    cells[row] = { ...cells[row], [column]: cell };
  };
  for (const [row, line] of Object.entries(config.cellData)) {
    cells[Number(row)] = Object.fromEntries(
      Object.entries(line as Record<string, ICellData>).map(([column, cell]) => [column, cell ? asValue(cell) : cell]),
    );
  }
  for (const [row, column, cell] of spilledCells(grid, source)) {
    const own = cells[row]?.[column];
    if (own?.v === undefined || own.v === null || own.v === '') put(row, column, { ...own, ...asValue(cell) });
  }
  const sheets = workbook.getSheets();
  const name = copyName(
    source.getSheetName(),
    ending,
    sheets.map((sheet) => sheet.getSheetName()),
  );
  const index = sheets.findIndex((sheet) => sheet.getSheetId() === source.getSheetId()) + 1;
  const id = crypto.randomUUID();
  workbook.setActiveSheet(workbook.insertSheet(name, { index, sheet: { ...config, id, name, cellData: cells } }));
  return { name };
}
