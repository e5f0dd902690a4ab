import type { StarterSheet } from '../../src/sheets/sheet.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { type Calculated, calculateStarter } from '../workbook/headless.js';

export type Row = readonly (number | string)[];

/** A starter sheet that somebody works on, calculated after each change. */
export interface Handled {
  readonly book: Calculated;
  shown(place: string): Calculated['at'] extends (place: string) => { value: infer V } ? V : never;
  /** Writes rows at a place at once, as a paste does. */
  paste(at: string, rows: readonly Row[]): Promise<void>;
  /** Puts rows in above a row, counted from 1. */
  putIn(row: number, count?: number): Promise<void>;
  takeOut(row: number, count?: number): Promise<void>;
}

/** Far right of everything that a starter sheet has. */
const ASIDE = 'AZ1';

export async function handled(starter: StarterSheet): Promise<Handled> {
  const book = await calculateStarter(starter);
  const sheet = workbookOf(book.grid).getActiveSheet();
  const settled = () => book.enter(ASIDE, '');
  return {
    book,
    shown: (place) => book.at(place).value,
    async paste(at, rows) {
      const from = sheet.getRange(at);
      sheet
        .getRange(from.getRow(), from.getColumn(), rows.length, rows[0]?.length ?? 0)
        .setValues(rows.map((row) => [...row]));
      await settled();
    },
    async putIn(row, count = 1) {
      sheet.insertRowsBefore(row - 1, count);
      await settled();
    },
    async takeOut(row, count = 1) {
      sheet.deleteRows(row - 1, count);
      await settled();
    },
  };
}
