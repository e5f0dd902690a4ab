import { canRun } from '../xlsx/runnable.js';
import { type FormulaEntry, readFormula } from './formula.js';

import { type NumberEntry, readNumber } from './number.js';
import type { Writing } from './writing.js';

export type Entry = NumberEntry | FormulaEntry | { readonly kind: 'boolean'; readonly value: boolean };

/** A typed formula, unless the grid would stand still over it. */
function formulaEntry(typed: string, writing: Writing, before?: string): FormulaEntry {
  const entry = readFormula(typed, writing, before);
  if (entry.kind === 'refused' || canRun(entry.formula)) return entry;
  return { kind: 'refused', message: writing.words.tooHeavy };
}

/** What a typed cell content means. Dates are never guessed: 5-10 stays the text it is. */
export function readEntry(typed: string, writing: Writing, before?: string): Entry {
  if (typed.startsWith('=') && typed.length > 1) return formulaEntry(typed, writing, before);
  if (/^(true|false)$/i.test(typed)) return { kind: 'boolean', value: typed.toLowerCase() === 'true' };
  return readNumber(typed, writing);
}
