import { Refusal, type Say } from '../refusal.js';

/** What Excel's own error codes mean to the person at the sheet, whatever was asked for ("Error handling", Microsoft’s documents). */
const REASONS: Readonly<Record<string, Say>> = {
  InvalidOperationInCellEditMode: ({ editing }) => editing,
  AccessDenied: (words) => words.protected,
  RequestAborted: ({ brokenOff }) => brokenOff,
  InactiveWorkbook: ({ inactive }) => inactive,
  ServiceNotAvailable: ({ hostBusy }) => hostBusy,
  ActivityLimitReached: ({ hostBusy }) => hostBusy,
  MemoryLimitReached: ({ tooMuch }) => tooMuch,
  RangeExceedsLimit: ({ tooMuch }) => tooMuch,
  OperationCellsExceedLimit: ({ tooMuch }) => tooMuch,
  RequestPayloadSizeLimitExceeded: ({ tooMuch }) => tooMuch,
  ResponsePayloadSizeLimitExceeded: ({ tooMuch }) => tooMuch,
  UnsupportedSheet: ({ otherSheet }) => otherSheet,
};

/** What some of them mean where cells are written or a place is gone to. */
export const WRITING: typeof REASONS = {
  InvalidArgument: ({ noRoomInExcel }) => noRoomInExcel,
  MergedRangeConflict: ({ merged }) => merged,
  PivotTableRangeConflict: ({ pivot }) => pivot,
};
export const GOING: typeof REASONS = {
  InvalidArgument: ({ gone }) => gone,
  InvalidReference: ({ gone }) => gone,
  ItemNotFound: ({ gone }) => gone,
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

/** Runs a call to Excel; what Excel refuses is thrown on as a refusal with a sentence, `own` to what is asked for or common. */
export async function inSentences<T>(call: () => Promise<T>, own: typeof REASONS = {}): Promise<T> {
  try {
    return await call();
  } catch (error) {
    if (!isCoded(error)) throw error;
    const { code, message } = error;
    throw new Refusal(own[code] ?? REASONS[code] ?? ((words) => words.excel(message)), { cause: error });
  }
}
