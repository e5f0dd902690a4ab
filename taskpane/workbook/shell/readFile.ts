import type { IWorkbookData } from '../engine/core.js';
import type { ReadText, TextChoices } from '../text/readText.js';
import { LIMITS, megabytes } from '../xlsx/limits.js';
import type { OpenWords } from '../xlsx/reading.js';

export interface ReadFile {
  readonly name: string;
  readonly workbook: IWorkbookData;
  /** The id of the sheet that is shown first. */
  readonly shown: string;
  /** A sentence about what was not taken, where there is something. */
  readonly leftOut: string | undefined;
  /** What to say once the workbook is open. */
  readonly notice: string;
}

export type ReadAnswer = ReadFile | { readonly refusal: string };

export interface ToRead {
  readonly file: File;
  /** For a file of text: what was chosen about how it is read. */
  readonly text?: TextChoices;
  /** Of the sentences. */
  readonly language: string;
}

type Answer<T> = T | { readonly refusal: string };

/** A thread of its own reads the file, so that the page answers meanwhile, and ends with `stop`. */
function ask<T>(toRead: Omit<ToRead, 'language'>, words: OpenWords, stop: AbortSignal): Promise<Answer<T>> {
  const { size } = toRead.file;
  // A file that is far too large is not even brought into memory.
  if (size > LIMITS.packed)
    return Promise.resolve({ refusal: words.packed(megabytes(size), megabytes(LIMITS.packed)) });
  const thread = new Worker(new URL('./readThread.js', import.meta.url), { name: 'reading' });
  const answer = new Promise<Answer<T>>((resolve, reject) => {
    thread.onmessage = ({ data }) => resolve(data);
    thread.onerror = (event) => {
      event.preventDefault();
      reject(new Error(event.message));
    };
    stop.addEventListener('abort', () => reject(stop.reason));
  });
  thread.postMessage({ ...toRead, language: navigator.language } satisfies ToRead);
  return answer.finally(() => thread.terminate());
}

/** What is in a workbook file that someone chose, or why it cannot be opened. */
export const readFile = (file: File, words: OpenWords, stop: AbortSignal): Promise<ReadAnswer> =>
  ask<ReadFile>({ file }, words, stop);

/** Whether a file is read as text, by the ending of its name. */
export const isTextFile = ({ name }: File): boolean => /\.(?:csv|tsv|tab|txt)$/i.test(name);

/** What is in a text file, read as the choices have it, or why it cannot be opened. */
export const readTextFile = (file: File, words: OpenWords, text: TextChoices, stop: AbortSignal) =>
  ask<ReadText>({ file, text }, words, stop);
