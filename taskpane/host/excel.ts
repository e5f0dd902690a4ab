import { insertSheet } from './excel/insertSheet.js';
import { onSelection, selection } from './excel/selection.js';
import { inSentences } from './excel/sentences.js';
import { write } from './excel/write.js';
import type { Host } from './host.js';

/** Excel as the pane sees it. Every failure comes back as a sentence. */
export const excelHost = (): Host => ({
  name: 'excel',
  selection: () => inSentences(selection),
  onSelection,
  write: (block, options) => inSentences(() => write(block, options?.overwrite ?? false)),
  insertSheet: (sheet) => inSentences(() => insertSheet(sheet)),
});
