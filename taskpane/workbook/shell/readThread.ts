import { loadTexts } from '../../texts/texts.js';
import { notationOf } from '../entry/notation.js';
import { knowsFunction } from '../formula/known.js';
import { gridOfBook, shownFirst } from '../grid/ofBook.js';
import { readText } from '../text/readText.js';
import { parseXml } from '../xlsx/leanXml.js';
import { readBook } from '../xlsx/readBook.js';
import type { ReadAnswer, ToRead } from './readFile.js';

/** What a thread has in place of a window. */
const thread = globalThis as unknown as EventTarget & { postMessage(answer: unknown): void };

async function read({ file, language, text }: ToRead): Promise<ReadAnswer | ReturnType<typeof readText>> {
  const { open: words, entry } = await loadTexts(language);
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (text) return readText(bytes, { notation: notationOf(language), words: entry }, words, text);
  const answer = readBook(bytes, parseXml, words, knowsFunction);
  if ('refusal' in answer) return answer;
  const leftOut = answer.leftOut.length > 0 ? words.leftOut(answer.leftOut.join('; ')) : undefined;
  const notice = [words.opened(file.name), leftOut].filter(Boolean).join(' ');
  return { name: file.name, workbook: gridOfBook(answer.book), shown: shownFirst(answer.book), leftOut, notice };
}

thread.addEventListener('message', (event) => {
  void read((event as MessageEvent<ToRead>).data).then((answer) => thread.postMessage(answer));
});
// The page hears of what was thrown, and says that the file cannot be read.
thread.addEventListener('unhandledrejection', (event) => {
  throw (event as PromiseRejectionEvent).reason;
});
