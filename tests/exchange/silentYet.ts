import type { FactKind } from './facts/fact.js';

/** Kinds of which something is still lost without a word, by workbook. This list may only become shorter. */
const SILENT_YET: Readonly<Record<string, readonly FactKind[]>> = {
  values: ['value'],
  'days from 1904': ['value'],
  formulas: ['value', 'number format'],
  'arrays and spills': ['array', 'formula', 'value'],
  'implicit intersection': ['array', 'formula', 'name', 'value'],
  'younger functions': ['array'],
  'foreign formulas': ['value'],
  names: ['value'],
  tables: ['value'],
};

export const isSilentYet = (name: string, kind: FactKind): boolean => (SILENT_YET[name] ?? []).includes(kind);
