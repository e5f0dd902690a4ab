import { BooleanNumber, CellValueType } from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '../engine/sheets.js';
import { ISheetClipboardService } from '../engine/sheetsUi.js';
import type { Notation } from '../entry/notation.js';
import type { Grid } from './boot.js';
import { allDigits, measureOf, shownFormatted, shownNumber } from './shownNumber.js';
import { isWide } from './widely.js';

/** Below the engine's number formats, so that numbers come in their format, or have none. */
const AFTER_FORMATS = 5;
/** What a cell leaves free on both sides, in pixels. */
const SIDES = 4;
/** The size of a font where a style names none, in points. */
const POINTS = 11;
const PIXELS_A_POINT = 96 / 72;
/** Digits of a number without a format in print. */
const PRINTED = 10;
/** How much wider bold digits are, at most. */
const BOLD = 1.1;

/** Shows numbers in the user's notation, and never a part of one; what is copied has all its digits. */
export function showNumbers(grid: Grid, notation: Notation): void {
  const injector = servicesOf(grid.univer);
  let copying = false;
  injector.get(ISheetClipboardService).addClipboardHook({
    id: 'all-digits',
    onBeforeCopy: () => {
      copying = true;
    },
    onAfterCopy: () => {
      copying = false;
    },
  });
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: AFTER_FORMATS,
    handler: (cell, { workbook, worksheet, col }, next) => {
      if (!cell || cell.t !== CellValueType.NUMBER) return next(cell);
      const { v } = cell;
      if (copying) return next(typeof v === 'number' ? { ...cell, v: allDigits(v, notation) } : cell);
      if (isWide()) {
        const digits = measureOf(1);
        return next(
          typeof v === 'number' ? { ...cell, v: shownNumber(v, digits('0'.repeat(PRINTED)), digits, notation) } : cell,
        );
      }
      const room = worksheet.getColumnWidth(col) - SIDES;
      const { fs, bl } = workbook.getStyles().get(cell.s) ?? {};
      const measure = measureOf((fs ?? POINTS) * PIXELS_A_POINT * (bl === BooleanNumber.TRUE ? BOLD : 1));
      if (typeof v === 'number') return next({ ...cell, v: shownNumber(v, room, measure, notation) });
      return next(typeof v === 'string' ? { ...cell, v: shownFormatted(v, room, measure) } : cell);
    },
  });
}
