import type { BookCell } from './book.js';
import { LIMITS } from './limits.js';
import { isDate } from './readFormats.js';
import { Formulas } from './readFormulas.js';
import type { Reading } from './reading.js';
import { type Place, placeOf } from './readPlaces.js';
import type { Shown } from './readStyles.js';
import { cellValue } from './readValues.js';
import { attribute, childrenOf, isTrue, whole, type XmlElement } from './readXml.js';
import { Refusal } from './refusal.js';

/** What all sheets of a file share. */
export interface Shared {
  readonly texts: readonly string[];
  readonly shown: readonly Shown[];
  /** Days between the file's count of dates and the grid's. */
  readonly days: number;
}

export type Rows = (BookCell | undefined)[][];

/** Holds what was taken so far against the limits. */
function count({ value, formula }: BookCell, { taken, words }: Reading) {
  taken.cells += 1;
  if (taken.cells > LIMITS.cells) throw new Refusal(words.cells(LIMITS.cells));
  taken.characters += (typeof value === 'string' ? value.length : 0) + (formula?.length ?? 0);
  if (taken.characters > LIMITS.characters) throw new Refusal(words.characters(LIMITS.characters));
}

function bookCell(cell: XmlElement, place: Place, formulas: Formulas, shared: Shared): BookCell {
  const { format, look } = shared.shown[whole(attribute(cell, 's')) ?? 0] ?? {};
  const { formula, spill, filled } = formulas.read(cell, place);
  const found = filled ? {} : cellValue(cell, shared.texts);
  const turned =
    shared.days > 0 && !formula && typeof found.value === 'number' && format && isDate(format)
      ? { value: found.value + shared.days }
      : {};
  return {
    ...found,
    ...turned,
    ...(formula ? { formula } : {}),
    ...(spill ? { spill } : {}),
    ...(format ? { format } : {}),
    ...(look ? { look } : {}),
  };
}

/** The cells of a sheet, row by row. */
export function rowsOf(data: XmlElement | undefined, shared: Shared, reading: Reading): Rows {
  const rows: Rows = [];
  const formulas = new Formulas(reading);
  let row = -1;
  for (const line of childrenOf(data, 'row')) {
    if (isTrue(attribute(line, 'hidden'))) reading.leftOut.add('hidden');
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
      const cell = bookCell(one, place, formulas, shared);
      if (Object.keys(cell).length === 0) continue;
      count(cell, reading);
      rows[place.row] ??= [];
      (rows[place.row] as (BookCell | undefined)[])[place.column] = cell;
    }
  }
  return rows;
}
