/** What Excel's own error codes mean to the person at the sheet. */
const SENTENCES: Readonly<Record<string, string>> = {
  InvalidOperationInCellEditMode: 'A cell is being edited: finish the entry, then try again.',
  AccessDenied: 'The sheet or workbook is protected: lift the protection, then try again.',
  InvalidArgument: 'The block does not fit on the sheet from the selected cell on: select a cell further up or left.',
  RequestAborted: 'Excel broke off the request: try again.',
};

interface CodedError {
  readonly code: string;
  readonly message: string;
}

const isCoded = (error: unknown): error is CodedError =>
  typeof error === 'object' &&
  error !== null &&
  'code' in error &&
  typeof error.code === 'string' &&
  'message' in error;

/** Runs a call to Excel; what Excel refuses is thrown on as a sentence. */
export async function inSentences<T>(call: () => Promise<T>): Promise<T> {
  try {
    return await call();
  } catch (error) {
    if (!isCoded(error)) throw error;
    throw new Error(SENTENCES[error.code] ?? `Excel refused: ${error.message}`, { cause: error });
  }
}
