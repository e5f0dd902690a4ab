import { datesOfBlock } from './blockDates.js';
import { readMoney } from './money.js';
import type { Notation } from './notation.js';
import { LONGEST, looksNumeric } from './number.js';

/** One number on its own that has a decimal mark to one reader and a group of three digits to another. */
const EITHER = /^[+\-−]?[1-9]\d{0,2}[.,]\d{3}\s*%?$/;
/** Groups of three digits throughout, as in 1.234.567. */
const GROUPS = /^\D*[1-9]\d{0,2}(?:[.,]\d{3}){2,}\D*$/;

type Mark = Notation['decimal'];
const other = (mark: Mark): Mark => (mark === ',' ? '.' : ',');

/** The decimal mark that a text can only have been written with; or that it may be read with either. */
function markOf(written: string): Mark | 'either' | undefined {
  if (written.length > LONGEST) return undefined;
  const text = readMoney(written)?.number ?? written.trim();
  if (!looksNumeric(text)) return undefined;
  const marks = (text.match(/[.,]/g) ?? []) as Mark[];
  const [first, last] = [marks[0], marks.at(-1)];
  if (!first || !last || !/[.,]\d/.test(text)) return undefined;
  if (first !== last) return marks.indexOf(last) === marks.length - 1 ? last : undefined;
  if (marks.length > 1) return GROUPS.test(text) ? other(first) : undefined;
  return EITHER.test(text) ? 'either' : last;
}

/** The same notation with this decimal mark; the mark that it had stands between groups then. */
export function withDecimal(own: Notation, decimal: Mark): Notation {
  if (decimal === own.decimal) return own;
  const groups = `${[...own.groups].filter((group) => group !== decimal).join('')}${own.decimal}`;
  return { ...own, decimal, groups };
}

export interface BlockNotation {
  readonly notation: Notation;
  /** The text that shows another decimal mark than the language has. */
  readonly shownBy?: string;
  /** A number that could be read in either way, where nothing in the block settles it. */
  readonly open?: string;
  /** The same of a date. */
  readonly openDate?: string;
}

/**
 * How the numbers of a pasted block are written. One program wrote them all, so what one cell shows holds for each;
 * where cells contradict each other, or show nothing, they are read as the user's language writes numbers.
 */
export function notationOfBlock(texts: readonly string[], language: Notation): BlockNotation {
  const { dates, open: openDate } = datesOfBlock(texts, language.dates);
  const own = { ...language, dates };
  const left = openDate === undefined ? {} : { openDate };
  const shown = new Map<Mark | 'either', string>();
  for (const text of texts) {
    const mark = markOf(text);
    if (mark && !shown.has(mark)) shown.set(mark, text.trim());
  }
  const [foreign, usual, open] = [shown.get(other(own.decimal)), shown.get(own.decimal), shown.get('either')];
  if (foreign !== undefined && usual === undefined) {
    return { notation: withDecimal(own, other(own.decimal)), shownBy: foreign, ...left };
  }
  return { notation: own, ...(open !== undefined && usual === undefined ? { open } : {}), ...left };
}
