import { freeSheetName } from '../../host/sheetName.js';
import type { BookSheet } from './book.js';
import { LIMITS } from './limits.js';
import type { Relation } from './parts.js';
import type { Reading } from './reading.js';
import { attribute, childOf, childrenOf, prefixed, type XmlElement } from './readXml.js';
import { Refusal } from './refusal.js';

interface ListedSheet {
  readonly name: string;
  /** The name that the file states, which may be one that no sheet can have. */
  readonly stated: string;
  readonly part: string;
  /** Its place in the file's list, in which names count. */
  readonly place: number;
  readonly hidden: BookSheet['hidden'];
}

const HIDDEN = ['hidden', 'veryHidden'] as const;

const UNFIT = /^'|'$|[[\]:*?/\\\p{Cc}]/u;
const fits = (name: string) => name.trim() !== '' && name.length <= 31 && !UNFIT.test(name);

/** The sheets of cells in their order, hidden ones too. */
export function sheetList(workbook: XmlElement, relations: readonly Relation[], reading: Reading): ListedSheet[] {
  const elements = childrenOf(childOf(workbook, 'sheets'), 'sheet');
  const { words, leftOut } = reading;
  if (elements.length > LIMITS.sheets) throw new Refusal(words.sheets(elements.length, LIMITS.sheets));
  const found: ListedSheet[] = [];
  for (const [place, element] of elements.entries()) {
    const relation = relations.find(({ id }) => id === prefixed(element, 'id'));
    if (relation && relation.kind !== 'worksheet') {
      leftOut.add('otherSheets');
      continue;
    }
    const stated = attribute(element, 'name') ?? '';
    const taken = found.map(({ name }) => name);
    const name = freeSheetName(fits(stated) ? stated : `Sheet ${found.length + 1}`, taken);
    if (name !== stated) leftOut.add('sheetNames');
    const state = attribute(element, 'state');
    const hidden = HIDDEN.find((one) => one === state);
    found.push({ name, stated, place, hidden, part: relation && !relation.outside ? relation.target : '' });
  }
  return found;
}
