import type { IWorkbookData } from '../engine/core.js';
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
  /** Of the sentences. */
  readonly language: string;
}

/**
 * What is in a file that someone chose, or why it cannot be opened. A thread of its own reads it, so that the page
 * answers meanwhile, and ends with `stop`.
 */
export function readFile(file: File, words: OpenWords, stop: AbortSignal): Promise<ReadAnswer> {
  // A file that is far too large is not even brought into memory.
  if (file.size > LIMITS.packed)
    return Promise.resolve({ refusal: words.packed(megabytes(file.size), megabytes(LIMITS.packed)) });
  const thread = new Worker(new URL('./readThread.js', import.meta.url), { name: 'reading' });
  const answer = new Promise<ReadAnswer>((resolve, reject) => {
    thread.onmessage = ({ data }) => resolve(data);
    thread.onerror = (event) => {
      event.preventDefault();
      reject(new Error(event.message));
    };
    stop.addEventListener('abort', () => reject(stop.reason));
  });
  thread.postMessage({ file, language: navigator.language } satisfies ToRead);
  return answer.finally(() => thread.terminate());
}
