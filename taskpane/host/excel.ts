import { goTo } from './excel/goTo.js';
import { read } from './excel/read.js';
import { onSelection, selection } from './excel/selection.js';
import { GOING, inSentences, WRITING } from './excel/sentences.js';
import { write } from './excel/write.js';
import type { Host } from './host.js';

const wholeSheets = () => import(/* webpackChunkName: "whole-sheets" */ './excel/wholeSheets.js');

/** Excel as the pane sees it. Every failure comes back as a sentence. */
export const excelHost = (): Host => ({
  name: 'excel',
  selection: () => inSentences(selection),
  onSelection,
  read: (references) => inSentences(() => read(references)),
  write: (block, options) => inSentences(() => write(block, options?.overwrite ?? false), WRITING),
  insertSheet: (sheet) => inSentences(async () => (await wholeSheets()).insertSheet(sheet)),
  readAll: (options) => inSentences(async () => (await wholeSheets()).readAll(options ?? {})),
  goTo: (reference) => inSentences(() => goTo(reference), GOING),
  copyWithValues: (ending) => inSentences(async () => (await wholeSheets()).copyWithValues(ending)),
});
