import type { SheetCell } from './sheet.js';

/** The user’s own column: it prints, and a figure with a source is the user’s whatever it is. */
export const SOURCE_TITLE = 'Source, date, by whom';
export const SOURCE_HELP =
  'Where the figure comes from, of what date, and who put it in. A figure with a source counts as your own.';

export const sourceCell: SheetCell = { style: 'input', note: SOURCE_HELP };
