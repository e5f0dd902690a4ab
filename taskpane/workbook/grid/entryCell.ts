import { CellValueType, type ICellData, type IStyleData } from '../engine/core.js';
import type { Entry } from '../entry/entry.js';
import { textCell } from './cells.js';

type Accepted = Exclude<Entry, { kind: 'refused' }>;

const isUnformatted = (look: IStyleData | undefined) => /^general$/i.test(look?.n?.pattern ?? '');
const isPercent = (look: IStyleData | undefined) => look?.n?.pattern.includes('%') ?? false;

/**
 * A number as the engine keeps it. In a cell shown as a percentage 70 means 70 % and 0,7 too, as
 * spreadsheets have it; the cell shows at once what was understood.
 */
function numberCell(entry: Accepted & { kind: 'number' }, look: IStyleData | undefined): ICellData {
  const { value, percent, decimals, format } = entry;
  if (format && (!look?.n?.pattern || isUnformatted(look)))
    return { v: value, t: CellValueType.NUMBER, s: { ...look, n: { pattern: format } } };
  if (!percent) {
    const hundredths = isPercent(look) && Math.abs(value) >= 1;
    return { v: hundredths ? value / 100 : value, t: CellValueType.NUMBER };
  }
  if (isPercent(look)) return { v: value, t: CellValueType.NUMBER };
  const pattern = decimals > 0 ? `0.${'0'.repeat(decimals)} %` : '0 %';
  return { v: value, t: CellValueType.NUMBER, s: { ...look, n: { pattern } } };
}

/** What a cell holds once `typed` is understood; the cell's earlier content is written over. */
export function entryCell(entry: Accepted, typed: string, look: IStyleData | undefined): ICellData {
  const nothing = { f: null, si: null, p: null, v: null };
  // The engine gives an answer the format that it asks for, such as that of a date, only where a cell says nothing of one.
  const unsaid = isUnformatted(look) ? { s: { ...look, n: null } } : {};
  if (entry.kind === 'formula') return { ...nothing, f: entry.formula, ...unsaid };
  if (look?.n?.pattern === '@') return { ...nothing, v: typed, t: CellValueType.FORCE_STRING };
  if (entry.kind === 'boolean') return { ...nothing, v: entry.value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (entry.kind === 'number') return { ...nothing, ...numberCell(entry, look) };
  return { ...nothing, ...textCell(typed) };
}
