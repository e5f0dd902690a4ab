import { pixelsAcross, scaleFor, turnedFor, USUAL_FONT, USUAL_WIDTH } from '../../../src/sheets/paper.js';
import { columnLetters } from '../../host/a1.js';
import type { BookCell, BookSheet } from './book.js';
import type { PageSetup } from './pageSetup.js';
import { OUR_MARGINS } from './starterPage.js';

/** A sheet of which it is said how it is printed. */
export type PagedSheet = BookSheet & { readonly page: PageSetup };

const isFilled = (cell: BookCell | undefined): cell is BookCell =>
  cell !== undefined &&
  (cell.value !== undefined || cell.error !== undefined || cell.formula !== undefined || cell.look?.fill !== undefined);

/** The print of a sheet of which no file has said anything: one page wide as far as its letters stay legible. */
function ownPage({ rows, widths, headerRows, labelColumns = 0, hiddenColumns = [] }: BookSheet): PageSetup {
  let used = 0;
  let font = USUAL_FONT;
  for (const row of rows) {
    for (const [column, cell] of (row ?? []).entries()) {
      if (!isFilled(cell)) continue;
      used = Math.max(used, column + 1);
      font = Math.min(font, cell.look?.size ?? USUAL_FONT);
    }
  }
  const hidden = new Set(hiddenColumns);
  const pixels = Array.from({ length: used }, (_, column) =>
    hidden.has(column) ? 0 : pixelsAcross(widths[column] ?? USUAL_WIDTH),
  ).reduce((sum, one) => sum + one, 0);
  const turned = turnedFor(pixels, font);
  const scale = scaleFor(pixels, turned, font);
  return {
    paper: { orientation: turned, scale: String(scale) },
    margins: OUR_MARGINS,
    ...(headerRows > 0 ? { rows: `1:${headerRows}` } : {}),
    ...(labelColumns > 0 ? { columns: `A:${columnLetters(labelColumns - 1)}` } : {}),
  };
}

/** A sheet as it is printed: as the file has it that it comes from, or legible. */
export const paged = (sheet: BookSheet): PagedSheet => ({ ...sheet, page: sheet.page ?? ownPage(sheet) });
