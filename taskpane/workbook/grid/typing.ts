import { CellValueType, type ICellData } from '@univerjs/core';
import { AFTER_CELL_EDIT, BEFORE_CELL_EDIT, INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';
import { readEntry } from '../entry/entry.js';
import { written } from '../entry/notation.js';
import type { Writing } from '../entry/writing.js';
import type { Grid } from './boot.js';
import { entryCell } from './entryCell.js';
import { address } from './place.js';
import { brokenRule } from './validation.js';

/** Above every handler of the engine, which reads 5-10 as a date and every number as an English one. */
const FIRST = 1000;
/** Below the engine's number formats, so that only numbers without a format are left to us. */
const AFTER_FORMATS = 5;

const typedText = ({ f, p, v }: ICellData) =>
  f ?? p?.body?.dataStream.replace(/\r\n$/, '') ?? (v == null ? '' : String(v));

/** Digits that a sheet shows: 0.1 + 0.2 is 0.3. */
const shown = (value: number) => Number(value.toPrecision(15));

type Tell = (where: string, typed: string, message: string) => void;

interface Told {
  /** Told what was not entered, since it is not clear what is meant. */
  readonly refuse: Tell;
  /** Told what was entered although it breaks the cell's rule. */
  readonly flag: Tell;
}

/** Reads what is typed in the user's notation, and shows numbers in it. */
export function readTyping(grid: Grid, writing: Writing, { refuse, flag }: Told) {
  const { notation } = writing;
  const interceptors = grid.univer.__getInjector().get(SheetInterceptorService);

  interceptors.writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: FIRST,
    handler: (cell, { worksheet, workbook, row, col }) => {
      if (!cell || cell.t === CellValueType.FORCE_STRING || cell.t === CellValueType.STRING) return cell;
      const typed = typedText(cell);
      const before = worksheet.getCellRaw(row, col);
      if (typed === '' || typed.includes('\r')) return cell;
      const entry = readEntry(typed, writing, before?.f ?? undefined);
      if (entry.kind === 'refused') {
        refuse(address(row, col), typed, entry.message);
        return before;
      }
      const understood = entryCell(entry, typed, workbook.getStyles().get(before?.s) ?? undefined);
      const broken = brokenRule(before?.custom?.validation, entry, typed, understood.v);
      if (broken !== undefined) flag(address(row, col), typed, broken);
      return { ...cell, ...understood };
    },
  });

  interceptors.writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: FIRST,
    handler: (cell, { worksheet, row, col }, next) => {
      const edited = next(cell);
      const raw = worksheet.getCellRaw(row, col);
      if (!edited || raw?.f || raw?.t !== CellValueType.NUMBER || typeof raw.v !== 'number') return edited;
      // A percentage arrives as the text 12.5%, a number as the number it is.
      const percent = typeof edited.v === 'string' && /^-?[\d.]+%$/.test(edited.v);
      return {
        ...edited,
        v: percent ? String(edited.v).replace('.', notation.decimal) : written(shown(raw.v), notation),
      };
    },
  });

  interceptors.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: AFTER_FORMATS,
    handler: (cell, _, next) =>
      cell && typeof cell.v === 'number' && cell.t === CellValueType.NUMBER
        ? next({ ...cell, v: written(shown(cell.v), notation) })
        : next(cell),
  });
}
