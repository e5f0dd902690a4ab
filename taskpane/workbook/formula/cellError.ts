import type { Answers } from '../../../functions/answers.js';

/** An error value of the grid together with the sentence that says why. */
export class CellError {
  constructor(
    readonly code: string,
    readonly message: string,
  ) {}
}

/** How the worksheet functions make their errors in the embedded grid. */
export const answers: Answers<CellError> = {
  refused: (message) => new CellError('#VALUE!', message),
  none: (message) => new CellError('#N/A', message),
  error: (code) => new CellError(code, ''),
  isError: (value: unknown): value is CellError => value instanceof CellError,
};
