import type { IWorkbookData } from '../engine/core.js';

/** What one saved workbook is in the browser's storage. */
export interface Saved {
  /** When, as an ISO date, for whoever looks into the storage. */
  readonly saved: string;
  /** The later of two has the higher one: a clock may be set back. Workbooks saved before it was counted have none. */
  readonly generation?: number;
  readonly workbook: IWorkbookData;
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

/** A spreadsheet program's largest sheet; the engine reserves room for every row and column that is said to be there. */
const MOST = { rowCount: 1_048_576, columnCount: 16_384 };

const isIndex = (key: string, most: number): boolean => /^\d+$/.test(key) && Number(key) < most;
const isCount = (count: unknown, most: number): boolean =>
  count === undefined || (Number.isInteger(count) && (count as number) > 0 && (count as number) <= most);

const areCells = (cells: unknown): boolean =>
  isRecord(cells) &&
  Object.entries(cells).every(
    ([row, line]) =>
      isIndex(row, MOST.rowCount) &&
      isRecord(line) &&
      Object.keys(line).every((column) => isIndex(column, MOST.columnCount)),
  );

const isSheet = (sheet: unknown): boolean =>
  isRecord(sheet) &&
  isCount(sheet.rowCount, MOST.rowCount) &&
  isCount(sheet.columnCount, MOST.columnCount) &&
  (sheet.cellData === undefined || areCells(sheet.cellData)) &&
  (sheet.mergeData === undefined || Array.isArray(sheet.mergeData));

/** Whether the engine can open it; a workbook damaged in any other way is noticed when it is opened. */
function isWorkbook(value: unknown): value is IWorkbookData {
  if (!isRecord(value) || !Array.isArray(value.sheetOrder) || value.sheetOrder.length === 0) return false;
  const { sheets, styles } = value;
  if (styles !== undefined && !isRecord(styles)) return false;
  return (
    typeof value.id === 'string' &&
    isRecord(sheets) &&
    value.sheetOrder.every((id) => typeof id === 'string' && isRecord(sheets[id])) &&
    Object.values(sheets).every(isSheet)
  );
}

export const isSaved = (value: unknown): value is Saved =>
  isRecord(value) && typeof value.saved === 'string' && isWorkbook(value.workbook);

export const generationOf = (saved: unknown): number => (isSaved(saved) ? (saved.generation ?? 0) : 0);

/** The later of two, where both can be read. */
export function later(saved: Saved | undefined, lastMoment: unknown): Saved | undefined {
  if (!isSaved(lastMoment)) return saved;
  if (!saved) return lastMoment;
  const ahead = generationOf(saved) - generationOf(lastMoment);
  return ahead > 0 || (ahead === 0 && saved.saved >= lastMoment.saved) ? saved : lastMoment;
}
