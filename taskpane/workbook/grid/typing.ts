import { CellValueType, type ICellData } from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import { AFTER_CELL_EDIT, BEFORE_CELL_EDIT, SheetInterceptorService } from '../engine/sheets.js';
import { readEntry } from '../entry/entry.js';
import type { Writing } from '../entry/writing.js';
import type { Grid } from './boot.js';
import { hasFormula, richText } from './cells.js';
import { entryCell } from './entryCell.js';
import { formulaAt } from './formulas.js';
import { allDigits } from './shownNumber.js';
import type { CellPlace } from './untilWritten.js';
import { brokenRule, meantChoice } from './validation.js';

/** Above every handler of the engine, which reads 5-10 as a date and every number as an English one. */
const FIRST = 1000;

const typedText = (cell: ICellData) => cell.f ?? richText(cell) ?? String(cell.v ?? '');

type Tell = (where: CellPlace, typed: string, message: string) => void;

interface Told {
  /** Told what was not entered, since it is not clear what is meant. */
  readonly refuse: Tell;
  /** Told what was entered although it breaks the cell's rule. */
  readonly flag: Tell;
}

/** Reads what is typed in the user's notation, and lets numbers be edited in it. */
export function readTyping(grid: Grid, writing: Writing, { refuse, flag }: Told) {
  const { notation } = writing;
  const interceptors = servicesOf(grid.univer).get(SheetInterceptorService);

  interceptors.writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: FIRST,
    handler: (cell, { worksheet, workbook, row, col }) => {
      if (!cell || cell.t === CellValueType.FORCE_STRING || cell.t === CellValueType.STRING) return cell;
      const before = worksheet.getCellRaw(row, col);
      const written = typedText(cell);
      const typed = meantChoice(before?.custom?.validation, written) ?? written;
      if (typed === '' || typed.includes('\r')) return cell;
      const entry = readEntry(typed, writing, formulaAt(grid, worksheet.getSheetId(), row, col));
      if (entry.kind === 'refused') {
        refuse({ sheet: worksheet.getSheetId(), row, column: col }, typed, entry.message);
        return before;
      }
      const understood = entryCell(entry, typed, workbook.getStyles().get(before?.s) ?? undefined);
      const broken = brokenRule(before?.custom?.validation, entry, typed, understood.v);
      if (broken !== undefined) flag({ sheet: worksheet.getSheetId(), row, column: col }, typed, broken);
      return { ...cell, ...understood };
    },
  });

  interceptors.writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: FIRST,
    handler: (cell, { worksheet, row, col }, next) => {
      const edited = next(cell);
      const raw = worksheet.getCellRaw(row, col);
      if (!edited || hasFormula(raw) || raw?.t !== CellValueType.NUMBER || typeof raw.v !== 'number') return edited;
      // A percentage arrives as the text 12.5%, a number as the number it is.
      const percent = typeof edited.v === 'string' && /^-?[\d.]+%$/.test(edited.v);
      return {
        ...edited,
        v: percent ? String(edited.v).replace('.', notation.decimal) : allDigits(raw.v, notation),
      };
    },
  });
}
