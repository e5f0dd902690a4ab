import { canRun } from '../xlsx/runnable.js';
import { readFigure } from './figure.js';
import { type FormulaEntry, readFormula } from './formula.js';
import type { NumberEntry } from './number.js';
import type { Writing } from './writing.js';

export type Entry = NumberEntry | FormulaEntry | { readonly kind: 'boolean'; readonly value: boolean };

/** A typed formula, unless the grid would stand still over it. */
function formulaEntry(typed: string, writing: Writing, before?: string): FormulaEntry {
  const entry = readFormula(typed, writing, before);
  if (entry.kind === 'refused' || canRun(entry.formula)) return entry;
  return { kind: 'refused', message: writing.words.tooHeavy };
}

/** A sum that begins with a sign, such as +450*2 or -(3+4)/2. A number with a sign, or one with dashes in it, is none. */
const SUM = /^[+-](?=.*[*/^(])[\d(][\d.,\s+\-*/^()%]*$/;

/** What a typed cell content means. What is no date in the order of the language is never guessed: 5-10 stays a text. */
export function readEntry(typed: string, writing: Writing, before?: string): Entry {
  if (typed.startsWith('=') && typed.length > 1) return formulaEntry(typed, writing, before);
  if (/^(true|false)$/i.test(typed)) return { kind: 'boolean', value: typed.toLowerCase() === 'true' };
  if (SUM.test(typed)) return formulaEntry(`=${typed.replace(/^\+/, '')}`, writing, before);
  return readFigure(typed, writing);
}
