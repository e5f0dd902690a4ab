import type { FactKind } from './facts/fact.js';

/** Kinds of which something is still lost without a word, by workbook. This list may only become shorter. */
const SILENT_YET: Readonly<Record<string, readonly FactKind[]>> = {
  // A return among the letters, an empty text, and letters that read like an error.
  values: ['value'],
  // A row of constants without braces around the formula; the format that the grid gives a date.
  formulas: ['value', 'number format'],
  // Arrays of a fixed reach come back as those that spill.
  'arrays and spills': ['array'],
  // Ranges that stood for the one cell beside the formula.
  'implicit intersection': ['array', 'value'],
  'younger functions': ['array', 'value'],
};

export const isSilentYet = (name: string, kind: FactKind): boolean => (SILENT_YET[name] ?? []).includes(kind);
