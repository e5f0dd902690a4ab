import type { IWorkbookData } from '../engine/core.js';
import { knowsFunction } from '../formula/known.js';
import { gridOfBook } from '../grid/ofBook.js';
import { LIMITS, megabytes } from '../xlsx/limits.js';
import { readBook } from '../xlsx/readBook.js';
import type { OpenWords } from '../xlsx/reading.js';
import type { XmlElement } from '../xlsx/readXml.js';

export interface ReadFile {
  readonly name: string;
  readonly workbook: IWorkbookData;
  /** A sentence about what was not taken, where there is something. */
  readonly leftOut: string | undefined;
  /** What to say once the workbook is open. */
  readonly notice: string;
}

/** A page's parser builds no page from a file: nothing in it is loaded, run or shown. */
function parse(text: string): XmlElement | undefined {
  const document = new DOMParser().parseFromString(text, 'application/xml');
  return document.querySelector('parsererror') ? undefined : document.documentElement;
}

/** What is in a file that someone chose, or why it cannot be opened. */
export async function readFile(file: File, words: OpenWords): Promise<ReadFile | { readonly refusal: string }> {
  // A file that is far too large is not even brought into memory.
  if (file.size > LIMITS.packed) return { refusal: words.packed(megabytes(file.size), megabytes(LIMITS.packed)) };
  const read = readBook(new Uint8Array(await file.arrayBuffer()), parse, words, knowsFunction);
  if ('refusal' in read) return read;
  const leftOut = read.leftOut.length > 0 ? words.leftOut(read.leftOut.join('; ')) : undefined;
  const notice = [words.opened(file.name), leftOut].filter(Boolean).join(' ');
  return { name: file.name, workbook: gridOfBook(read.book), leftOut, notice };
}
