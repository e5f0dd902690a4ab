import type { SheetCell, StarterSheet } from './sheet.js';

/** A cell to fill in, without the example’s figure or words. */
const emptiedCell = (cell: SheetCell): SheetCell => {
  if (cell.style !== 'input') return cell;
  const { number: _, text: __, ...rest } = cell;
  return rest;
};

/** A starter sheet of the same shape, with nothing of the example in it. */
export const emptied = (sheet: StarterSheet): StarterSheet => ({
  ...sheet,
  rows: sheet.rows.map((cells) => cells.map(emptiedCell)),
});
