import { FormulaDataModel, LexerTreeBuilder } from '../engine/formula.js';
import { servicesOf } from '../engine/services.js';
import type { Grid } from './boot.js';
import { workbookOf } from './place.js';

/** The formula of one cell as one would type it there, also where it was copied down and stands in another cell. */
export const formulaAt = (grid: Grid, sheetId: string, row: number, column: number): string | undefined =>
  servicesOf(grid.univer)
    .get(FormulaDataModel)
    .getFormulaStringByCell(row, column, sheetId, workbookOf(grid).getId()) || undefined;

/** The same for all cells of a sheet, which is looked through once. */
export function formulasOf(grid: Grid, sheetId: string): (row: number, column: number) => string | undefined {
  const injector = servicesOf(grid.univer);
  const all = injector.get(FormulaDataModel).getSheetFormulaData(workbookOf(grid).getId(), sheetId) ?? {};
  const lexer = injector.get(LexerTreeBuilder);
  return (row, column) => {
    const { f, x = 0, y = 0 } = all[row]?.[column] ?? {};
    if (!f) return undefined;
    return x === 0 && y === 0 ? f : lexer.moveFormulaRefOffset(f, x, y);
  };
}
