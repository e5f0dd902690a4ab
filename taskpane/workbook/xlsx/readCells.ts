import type { BookCell } from './book.js';
import { LIMITS } from './limits.js';
import { isDate } from './readFormats.js';
import { Formulas } from './readFormulas.js';
import type { Reading } from './reading.js';
import { type Place, placeOf } from './readPlaces.js';
import type { Shown } from './readStyles.js';
import { hasLooks } from './readTexts.js';
import { cellValue } from './readValues.js';
import { attribute, childOf, childrenOf, whole, type XmlElement } from './readXml.js';
import { Refusal } from './refusal.js';

/** What all sheets of a file share. */
export interface Shared {
  readonly texts: readonly string[];
  /** The numbers of those that have several looks inside. */
  readonly rich: ReadonlySet<number>;
  readonly shown: readonly Shown[];
  /** Days between the file's count of dates and the grid's. */
  readonly days: number;
}

export type Rows = (BookCell | undefined)[][];

/** Whether the text of a cell has several looks inside it, of which the grid keeps none. */
function isRich(cell: XmlElement, rich: ReadonlySet<number>): boolean {
  const kind = attribute(cell, 't');
  if (kind === 's') return rich.has(whole(childOf(cell, 'v')?.textContent ?? undefined) ?? -1);
  return kind === 'inlineStr' && hasLooks(childOf(cell, 'is'));
}

/** Holds what was taken so far against the limits. */
function count({ value, formula, kept }: BookCell, { taken, words }: Reading) {
  taken.cells += 1;
  if (taken.cells > LIMITS.cells) throw new Refusal(words.cells(LIMITS.cells));
  taken.characters += (typeof value === 'string' ? value.length : 0) + (formula ?? kept ?? '').length;
  if (taken.characters > LIMITS.characters) throw new Refusal(words.characters(LIMITS.characters));
}

/** More marks on one letter than any script has; drawing tens of thousands takes a minute. */
const PILED_MARKS = /(\p{M}{20})\p{M}+/gu;

/** A text as long as a cell takes one, which is the limit of spreadsheet programs, too. */
function boundText(found: Pick<BookCell, 'value' | 'error'>, { leftOut }: Reading): Pick<BookCell, 'value' | 'error'> {
  if (typeof found.value !== 'string' || found.value.length <= 20) return found;
  const value = found.value.slice(0, LIMITS.text).replace(PILED_MARKS, '$1');
  if (value.length < found.value.length) leftOut.add('longTexts');
  return { ...found, value };
}

/** Whether a number counts days; a part of one day is a time, except that the first day of a count is 0. */
const isDayNumber = (value: number): boolean => value >= 1 || value === 0;

function bookCell(cell: XmlElement, place: Place, formulas: Formulas, shared: Shared, reading: Reading): BookCell {
  const { leftOut } = reading;
  const { format, look, align, missing = [] } = shared.shown[whole(attribute(cell, 's')) ?? 0] ?? {};
  for (const one of missing) leftOut.add(one);
  if (isRich(cell, shared.rich)) leftOut.add('richText');
  const { formula, spill, fixed, filled, kept } = formulas.read(cell, place);
  const found = filled ? {} : boundText(cellValue(cell, shared.texts), reading);
  if (found.value === '' && !formula && !kept) leftOut.add('emptyTexts');
  // A day that is written out is counted as the grid counts already.
  const isCounted = shared.days > 0 && attribute(cell, 't') !== 'd';
  const turned =
    isCounted && !formula && typeof found.value === 'number' && isDayNumber(found.value) && format && isDate(format)
      ? { value: found.value + shared.days }
      : {};
  return {
    ...found,
    ...turned,
    ...(formula ? { formula } : {}),
    ...(spill ? { spill } : {}),
    ...(fixed ? { fixed } : {}),
    ...(kept ? { kept } : {}),
    ...(format ? { format } : {}),
    ...(look ? { look } : {}),
    ...(align ? { align } : {}),
  };
}

/** The cells of a sheet, row by row. */
export function rowsOf(data: XmlElement | undefined, shared: Shared, reading: Reading): Rows {
  const rows: Rows = [];
  const formulas = new Formulas(reading);
  let row = -1;
  for (const line of childrenOf(data, 'row')) {
    // A file may leave addresses out: then each row and cell follows the one before.
    row = (whole(attribute(line, 'r')) ?? row + 2) - 1;
    let column = -1;
    for (const one of childrenOf(line, 'c')) {
      const address = attribute(one, 'r');
      const place = address === undefined ? { row, column: column + 1 } : placeOf(address);
      if (!place || place.row < 0) {
        reading.leftOut.add('brokenCells');
        continue;
      }
      column = place.column;
      if (place.row >= LIMITS.rows || place.column >= LIMITS.columns) {
        if (childrenOf(one).length > 0) reading.leftOut.add('outsideCells');
        continue;
      }
      const cell = bookCell(one, place, formulas, shared, reading);
      if (Object.keys(cell).length === 0) continue;
      count(cell, reading);
      rows[place.row] ??= [];
      (rows[place.row] as (BookCell | undefined)[])[place.column] = cell;
    }
  }
  return rows;
}
