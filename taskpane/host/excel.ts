import { copyWithValues } from './excel/copyWithValues.js';
import { goTo } from './excel/goTo.js';
import { insertSheet } from './excel/insertSheet.js';
import { read } from './excel/read.js';
import { readAll } from './excel/readAll.js';
import { onSelection, selection } from './excel/selection.js';
import { inSentences } from './excel/sentences.js';
import { write } from './excel/write.js';
import type { Host } from './host.js';

/** Excel as the pane sees it. Every failure comes back as a sentence. */
export const excelHost = (): Host => ({
  name: 'excel',
  selection: () => inSentences(selection),
  onSelection,
  read: (references) => inSentences(() => read(references)),
  write: (block, options) => inSentences(() => write(block, options?.overwrite ?? false)),
  insertSheet: (sheet) => inSentences(() => insertSheet(sheet)),
  readAll: (options) => inSentences(() => readAll(options ?? {})),
  goTo: (reference) => inSentences(() => goTo(reference)),
  copyWithValues: (ending) => inSentences(() => copyWithValues(ending)),
});
