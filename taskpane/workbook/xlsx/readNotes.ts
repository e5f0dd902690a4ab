import { LIMITS } from './limits.js';
import type { Rows } from './readCells.js';
import type { Reading } from './reading.js';
import { placeOf } from './readPlaces.js';
import { plainText } from './readTexts.js';
import { attribute, childOf, childrenOf, type XmlElement } from './readXml.js';

/** Gives cells the notes that someone wrote about them. */
export function addNotes(root: XmlElement | undefined, rows: Rows, { leftOut }: Reading): void {
  const signed = childrenOf(childOf(root, 'authors'), 'author').some(({ textContent }) => textContent?.trim());
  for (const one of childrenOf(childOf(root, 'commentList'), 'comment').slice(0, LIMITS.rows)) {
    const place = placeOf(attribute(one, 'ref') ?? '');
    const note = plainText(childOf(one, 'text')).trim();
    if (!place || !note || place.row >= LIMITS.rows || place.column >= LIMITS.columns) continue;
    const looks = childrenOf(childOf(one, 'text'), 'r').some((run) => childOf(run, 'rPr'));
    if (looks || signed) leftOut.add('notes');
    rows[place.row] ??= [];
    const line = rows[place.row] as Rows[number];
    line[place.column] = { ...line[place.column], remark: note };
  }
}
