import { CellValueType, type ICellData } from '../engine/core.js';
import type { FRange } from '../engine/facade.js';
import { dayOf } from '../entry/date.js';
import { kindOf, patternNotation } from './numberPattern.js';

/** The present day as a cell keeps it, in the cell's own format of dates where it has one. */
export function today(cell: FRange, language: string): ICellData {
  const now = new Date();
  const style = cell.getCellStyleData('cell') ?? {};
  const pattern = kindOf(style.n?.pattern) === 'date' ? style.n?.pattern : undefined;
  return {
    v: dayOf(now.getFullYear(), now.getMonth() + 1, now.getDate()) as number,
    t: CellValueType.NUMBER,
    f: null,
    si: null,
    p: null,
    s: { ...style, n: { pattern: pattern ?? patternNotation(language).date } },
  };
}
