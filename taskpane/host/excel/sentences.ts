import { Refusal, type Say } from '../refusal.js';

/** What Excel's own error codes mean to the person at the sheet. */
const REASONS: Readonly<Record<string, Say>> = {
  InvalidOperationInCellEditMode: ({ editing }) => editing,
  AccessDenied: (words) => words.protected,
  InvalidArgument: ({ noRoomInExcel }) => noRoomInExcel,
  RequestAborted: ({ brokenOff }) => brokenOff,
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

/** Runs a call to Excel; what Excel refuses is thrown on as a refusal with a sentence. */
export async function inSentences<T>(call: () => Promise<T>): Promise<T> {
  try {
    return await call();
  } catch (error) {
    if (!isCoded(error)) throw error;
    const { code, message } = error;
    throw new Refusal(REASONS[code] ?? ((words) => words.excel(message)), { cause: error });
  }
}
