import { BooleanNumber, type IRowData, type IWorksheetData } from '../engine/core.js';

/** Points are 72 of an inch, pixels 96. */
const POINT = 96 / 72;

/** Heights in points, as the engine keeps them. */
export const rowHeights = (heights: readonly (number | undefined)[]): NonNullable<IWorksheetData['rowData']> =>
  Object.fromEntries(
    heights.flatMap((height, row) =>
      height === undefined ? [] : [[row, { h: height * POINT, ia: BooleanNumber.FALSE }]],
    ),
  );

/** The heights that someone chose, in points; what adapts to its content has none. */
export function heightsOf(rows: Readonly<Record<number, Partial<IRowData>>> = {}): (number | undefined)[] {
  const heights: (number | undefined)[] = [];
  for (const [row, { h, ia }] of Object.entries(rows))
    if (h !== undefined && ia === BooleanNumber.FALSE) heights[Number(row)] = Math.round((h / POINT) * 100) / 100;
  return Array.from(heights);
}
