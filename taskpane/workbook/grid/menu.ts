/**
 * Entries of the engine's menu on cells that have no place here. Its way of pasting reads numbers as English ones and
 * 5-10 as a date; the keys for it go through our own reading. Protection would have to be kept by files too.
 */
const LEFT_OUT = [
  'sheet.command.copy',
  'sheet.command.cut',
  'sheet.command.paste',
  'sheet.menu.copy-special',
  'sheet.menu.paste-special',
  'sheet.contextMenu.text-to-number',
  'sheet.contextMenu.permission',
] as const;

/** The menu on cells, rows and columns: clearing, inserting, deleting, freezing and widths. */
export const menu = Object.fromEntries(LEFT_OUT.map((id) => [id, { hidden: true }]));
