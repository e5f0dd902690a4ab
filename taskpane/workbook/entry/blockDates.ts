import type { DateNotation } from './date.js';

const DATE = /^\s*(\d{1,2})([./-])(\d{1,2})\2(?:\d{4}|\d{2})(?:[T,\s].*)?$/;
const MONTHS = 12;

export interface BlockDates {
  readonly dates: DateNotation;
  /** A date that means one day or another by the order, where nothing in the block settles it. */
  readonly open?: string;
}

/**
 * How the dates of a block are written: by the mark between their parts, and by the days that are no month. Dates with
 * points have the day first (common practice, no source). They are shown in the order of the language.
 */
export function datesOfBlock(texts: Iterable<string>, own: DateNotation): BlockDates {
  const first = new Map<string, { open?: string; dmy: boolean; mdy: boolean }>();
  for (const text of texts) {
    const [, one = '', mark = '', other = ''] = DATE.exec(text) ?? [];
    if (mark === '') continue;
    const may = first.get(mark) ?? { dmy: true, mdy: mark !== '.' };
    if (Number(other) > MONTHS) may.dmy = false;
    if (Number(one) > MONTHS) may.mdy = false;
    if (may.open === undefined && Number(one) !== Number(other)) may.open = text.trim();
    first.set(mark, may);
  }
  const [written, ...others] = first;
  if (!written || others.length > 0) return { dates: own };
  const [mark, { dmy, mdy, open }] = written;
  if (dmy === mdy) {
    const order = own.order === 'mdy' ? 'mdy' : 'dmy';
    return { dates: { ...own, mark, order }, ...(dmy && open !== undefined ? { open } : {}) };
  }
  return { dates: { ...own, mark, order: dmy ? 'dmy' : 'mdy' } };
}
