import type { FactKind } from './facts/fact.js';

/** Kinds of which something is still lost without a word, by workbook. This list may only become shorter. */
const SILENT_YET: Readonly<Record<string, readonly FactKind[]>> = {
  values: ['value', 'rich text'],
  'days from 1904': ['value'],
  formulas: ['value', 'number format'],
  'arrays and spills': ['array', 'formula', 'value'],
  'implicit intersection': ['array', 'formula', 'name', 'value'],
  'younger functions': ['array'],
  'foreign formulas': ['value'],
  names: ['value'],
  tables: ['value'],
  fonts: ['font'],
  fills: ['fill'],
  borders: ['border'],
  alignment: ['alignment'],
  'shape of sheets': ['column width', 'outline', 'row height', 'tab colour', 'view'],
  'notes and links': ['note', 'rule for entries'],
};

/** What a saved file says of print where the one that was opened says nothing or something else. */
const PRINT_YET: readonly FactKind[] = ['print'];

export const isSilentYet = (name: string, kind: FactKind): boolean =>
  PRINT_YET.includes(kind) || (SILENT_YET[name] ?? []).includes(kind);
