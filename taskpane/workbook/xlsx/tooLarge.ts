import type { Book } from './book.js';
import { LIMITS } from './limits.js';
import type { OpenWords } from './reading.js';

/** Why a file with this workbook could not be opened here again; or nothing. The limits are those of reading. */
export function tooLarge({ sheets }: Book, words: OpenWords): string | undefined {
  if (sheets.length > LIMITS.sheets) return words.sheets(sheets.length, LIMITS.sheets);
  let cells = 0;
  let characters = 0;
  for (const { rows } of sheets) {
    if (rows.length > LIMITS.rows || rows.some((row) => (row?.length ?? 0) > LIMITS.columns))
      return words.reach(LIMITS.rows, LIMITS.columns);
    for (const row of rows) {
      for (const cell of row ?? []) {
        if (!cell) continue;
        cells += 1;
        characters +=
          (typeof cell.value === 'string' ? cell.value.length : 0) + (cell.formula ?? cell.kept ?? '').length;
      }
    }
  }
  if (cells > LIMITS.cells) return words.cells(LIMITS.cells);
  return characters > LIMITS.characters ? words.characters(LIMITS.characters) : undefined;
}
