import type { IRange } from './core.js';

/** Whether a cell lies in a range; whole rows and columns have no number for their ends. */
export const within = ({ startRow, endRow, startColumn, endColumn }: IRange, row: number, column: number): boolean =>
  !(row < startRow || row > endRow || column < startColumn || column > endColumn);
