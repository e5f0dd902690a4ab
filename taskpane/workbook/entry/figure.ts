import { readMoment } from './date.js';
import { moneyFormat, readMoney } from './money.js';
import { type NumberEntry, readNumber } from './number.js';
import type { Writing } from './writing.js';

/** A number with the sign of a currency, or in brackets. */
function moneyEntry(typed: string, writing: Writing): NumberEntry | undefined {
  const money = readMoney(typed);
  const entry = money && readNumber(money.number, writing);
  if (!money || !entry || entry.kind === 'text' || (entry.kind === 'number' && entry.percent)) return undefined;
  return entry.kind === 'number' ? { ...entry, format: moneyFormat(money, entry.decimals) } : entry;
}

function momentEntry(typed: string, { notation }: Writing): NumberEntry | undefined {
  const moment = readMoment(typed, notation.dates);
  return moment && { kind: 'number', value: moment.value, percent: false, decimals: 0, format: moment.format };
}

/** A date, a time, a sum of money or a number; what is no date in the order of the language is never guessed. */
export const readFigure = (typed: string, writing: Writing): NumberEntry =>
  momentEntry(typed, writing) ?? moneyEntry(typed, writing) ?? readNumber(typed, writing);
