import { type FormulaEntry, readFormula } from './formula.js';

import { type NumberEntry, readNumber } from './number.js';
import type { Writing } from './writing.js';

export type Entry = NumberEntry | FormulaEntry | { readonly kind: 'boolean'; readonly value: boolean };

/** What a typed cell content means. Dates are never guessed: 5-10 stays the text it is. */
export function readEntry(typed: string, writing: Writing, before?: string): Entry {
  if (typed.startsWith('=') && typed.length > 1) return readFormula(typed, writing, before);
  if (/^(true|false)$/i.test(typed)) return { kind: 'boolean', value: typed.toLowerCase() === 'true' };
  return readNumber(typed, writing);
}
