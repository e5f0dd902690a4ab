import { a1 } from '../a1.js';
import type { Block, BlockCell } from '../host.js';
import { NotEmpty } from '../refusal.js';
import { contentOf, rectangle } from './contents.js';
import { dress } from './looks.js';
import { points } from './points.js';

const place = (address: string): string => address.slice(address.lastIndexOf('!') + 1);

/** Writes a block from the active cell on, in one batch after one reading. */
export const write = ({ rows }: Block, overwrite: boolean): Promise<{ address: string }> =>
  Excel.run(async (context) => {
    const cells = rectangle(rows, {});
    const anchor = context.workbook.getActiveCell();
    const range = anchor.getResizedRange(cells.length - 1, (cells[0]?.length ?? 1) - 1);
    anchor.load(['rowIndex', 'columnIndex']);
    range.load(['address', 'formulas']);
    const columns = (cells[0] ?? []).map((_, column) => range.getColumn(column).format);
    for (const column of columns) column.load('columnWidth');
    await context.sync();

    const at = (row: number, column: number) => a1(anchor.rowIndex + row, anchor.columnIndex + column);
    const address = place(range.address);
    const taken = overwrite ? undefined : firstTaken(range.formulas, at);
    if (taken) throw new NotEmpty(address, taken);

    // Formats first: a cell that was made text before would keep a formula as text.
    range.numberFormat = cells.map((row) => row.map(({ format }) => format ?? 'General'));
    range.formulas = cells.map((row) => row.map((cell) => contentOf(cell, cell.formula?.(at))));
    for (const [row, line] of cells.entries()) {
      for (const [column, { style }] of line.entries()) if (style) dress(range.getCell(row, column), style);
    }
    for (const [index, column] of columns.entries()) {
      const needed = widthFor(cells.map((row) => row[index]));
      if (needed > column.columnWidth) column.columnWidth = needed;
    }
    await context.sync();
    return { address };
  });

const MOST_CHARACTERS = 45;

/** Wide enough for labels and units; a note may run over into the next columns. */
function widthFor(cells: readonly (BlockCell | undefined)[]): number {
  const lengths = cells.map((cell) => (cell?.style === 'note' ? 0 : (cell?.text?.length ?? cell?.room ?? 0)));
  return points(Math.min(MOST_CHARACTERS, Math.max(...lengths)) + 1);
}

function firstTaken(
  formulas: readonly (readonly unknown[])[],
  at: (row: number, column: number) => string,
): string | undefined {
  for (const [row, line] of formulas.entries()) {
    const column = line.findIndex((formula) => formula !== '');
    if (column >= 0) return at(row, column);
  }
  return undefined;
}
