import type { CellContent } from '../../host/host.js';
import type { SheetContents, WorkbookContents } from '../../host/workbookContents.js';
import type { FWorksheet } from '../engine/facade.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { formulasOf } from './formulas.js';
import { isErrorCell, spilledCells, workbookOf } from './place.js';
import { readCell } from './selection.js';

/** The cells of one sheet: its own, and those that an answer spilled into. */
function readSheet(grid: Grid, sheet: FWorksheet): SheetContents {
  const formulas: CellContent[][] = [];
  const values: CellContent[][] = [];
  const formulaAt = formulasOf(grid, sheet.getSheetId());
  const put = (table: CellContent[][], row: number, column: number, content: CellContent) => {
    while (table.length <= row) table.push([]);
    (table[row] as CellContent[])[column] = content;
  };
  sheet
    .getSheet()
    .getCellMatrix()
    .forValue((row, column, cell) => {
      if (!cell) return;
      const value = contentOf(cell);
      const formula = formulaAt(row, column);
      if (value !== null) put(values, row, column, value);
      if (formula || value !== null) put(formulas, row, column, formula || value);
    });
  for (const [row, column, cell] of spilledCells(grid, sheet)) {
    const value = contentOf(cell);
    if (value !== null && (values[row]?.[column] ?? null) === null) put(values, row, column, value);
  }
  const blank = (table: CellContent[][]) => table.map((line) => Array.from(line, (content) => content ?? null));
  return { name: sheet.getSheetName(), row: 0, column: 0, formulas: blank(formulas), values: blank(values) };
}

export function readAll(grid: Grid): WorkbookContents {
  const workbook = workbookOf(grid);
  return {
    active: workbook.getActiveSheet().getSheetName(),
    sheets: workbook.getSheets().map((sheet) => readSheet(grid, sheet)),
    names: workbook.getDefinedNames().map((one) => ({ name: one.getName(), formula: one.getFormulaOrRefString() })),
    message(name, row, column) {
      const sheet = workbook.getSheetByName(name);
      if (!sheet || !isErrorCell(sheet.getSheet().getCellRaw(row, column))) return undefined;
      return readCell(grid, sheet, row, column).message;
    },
  };
}
