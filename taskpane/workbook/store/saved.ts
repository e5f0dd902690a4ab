import type { IWorkbookData } from '@univerjs/core';

/** What one saved workbook is in the browser's storage. */
export interface Saved {
  /** When, as an ISO date. */
  readonly saved: string;
  readonly workbook: IWorkbookData;
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

/** Whether the engine can open it; a workbook damaged in any other way is noticed when it is opened. */
function isWorkbook(value: unknown): value is IWorkbookData {
  if (!isRecord(value) || !Array.isArray(value.sheetOrder) || value.sheetOrder.length === 0) return false;
  const { sheets } = value;
  return (
    typeof value.id === 'string' &&
    isRecord(sheets) &&
    value.sheetOrder.every((id) => typeof id === 'string' && isRecord(sheets[id])) &&
    Object.values(sheets).every(
      (sheet) => isRecord(sheet) && (sheet.cellData === undefined || isRecord(sheet.cellData)),
    )
  );
}

export const isSaved = (value: unknown): value is Saved =>
  isRecord(value) && typeof value.saved === 'string' && isWorkbook(value.workbook);

/** The later of two, where both can be read. */
export function later(saved: Saved | undefined, lastMoment: unknown): Saved | undefined {
  if (!isSaved(lastMoment)) return saved;
  return saved && saved.saved >= lastMoment.saved ? saved : lastMoment;
}
