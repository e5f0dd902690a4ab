/** How a host says that a cell has no value. `E` is the host's own error object. */
export interface Answers<E> {
  /** #VALUE! with a sentence. */
  refused(message: string): E;
  /** #N/A with a sentence. */
  none(message: string): E;
  /** The host's error for an error value that arrived in a data type, such as `#DIV/0!`. */
  error(code: string): E;
  isError(value: unknown): value is E;
}

/** One error object for each distinct sentence of a call: 100,000 rows refused alike share one. */
export function sharing<E>(answers: Answers<E>): Answers<E> {
  const shared = (make: (text: string) => E) => {
    const made = new Map<string, E>();
    return (text: string): E => {
      let error = made.get(text);
      if (error === undefined) {
        error = make(text);
        made.set(text, error);
      }
      return error;
    };
  };
  return {
    refused: shared(answers.refused),
    none: shared(answers.none),
    error: shared(answers.error),
    isError: answers.isError,
  };
}
