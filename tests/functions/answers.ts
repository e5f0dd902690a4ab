import type { Answers } from '../../functions/answers.js';
import { bindAll } from '../../functions/bind.js';

/** A host's error object for tests: the code and the sentence. */
export class CellError {
  constructor(
    readonly code: string,
    readonly message = '',
  ) {}
}

export const answers: Answers<CellError> = {
  refused: (message) => new CellError('#VALUE!', message),
  none: (message) => new CellError('#N/A', message),
  error: (code) => new CellError(code),
  isError: (value): value is CellError => value instanceof CellError,
};

const bound = bindAll(answers);

/** Calls a worksheet function as a host does, the invocation object last. */
export function call(id: string, ...args: readonly unknown[]): unknown {
  const fn = bound.get(id);
  if (!fn) throw new Error(`${id} is not bound`);
  return fn(...args, {});
}
