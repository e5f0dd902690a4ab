import type { CellContent } from '../../host/cell.js';
import type { BookCell } from './book.js';
import { isError } from './errors.js';
import { plainText } from './readTexts.js';
import { attribute, childOf, unescaped, whole, type XmlElement } from './readXml.js';

const DAY = 86_400_000;
/** The first of January 1970 in the worksheet's count of days. */
const EPOCH = 25_569;

const number = (text: string): CellContent => {
  const value = Number(text);
  return text.trim() !== '' && Number.isFinite(value) ? value : null;
};

function dayOf(text: string): CellContent {
  const moment = Date.parse(/[Zz]|[+-]\d\d:\d\d$/.test(text) ? text : text.includes('T') ? `${text}Z` : text);
  return Number.isFinite(moment) ? moment / DAY + EPOCH : text;
}

function contentOf(kind: string, text: string, cell: XmlElement, texts: readonly string[]): CellContent {
  switch (kind) {
    case 's':
      return texts[whole(text) ?? -1] ?? null;
    case 'inlineStr':
      return plainText(childOf(cell, 'is'));
    case 'str':
    case 'e':
      return unescaped(text);
    case 'b':
      return text === '1' || text === 'true';
    case 'd':
      return dayOf(text);
    default:
      return number(text);
  }
}

/** The value of a cell, or the error in its place. */
export function cellValue(cell: XmlElement, texts: readonly string[]): Pick<BookCell, 'value' | 'error'> {
  const kind = attribute(cell, 't') ?? 'n';
  const text = childOf(cell, 'v')?.textContent ?? '';
  if (kind === 'e' && isError(text)) return { error: text };
  const value = contentOf(kind, text, cell, texts);
  // Text that a cell states is a text, be it empty; the empty answer of no formula is nothing.
  const empty = value === '' && kind === 'str' && !childOf(cell, 'f');
  return value === null || empty ? {} : { value };
}
