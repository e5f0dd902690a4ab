import { dateNotationOf } from '../entry/date.js';

/** The kinds of number formats that the format bar offers. */
export const KINDS = ['general', 'number', 'percent', 'euro', 'dollar', 'date', 'time', 'text'] as const;
export type Kind = (typeof KINDS)[number];

/** How a language writes what its number formats need. */
interface PatternNotation {
  /** A day, month and year in the order of the language, such as `dd.mm.yyyy`. */
  readonly date: string;
  /** Whether the sign of a currency stands behind the number. */
  readonly signBehind: boolean;
}

export function patternNotation(language: string): PatternNotation {
  const money = new Intl.NumberFormat(language, { style: 'currency', currency: 'EUR' }).formatToParts(1);
  return {
    date: dateNotationOf(language).pattern,
    signBehind: money.findIndex(({ type }) => type === 'currency') > money.findIndex(({ type }) => type === 'integer'),
  };
}

/** A sum of money as the worksheet's own notation has it. */
const moneyPattern = (sign: '€' | '$' | '£', { signBehind }: Pick<PatternNotation, 'signBehind'>, decimals = 2) => {
  const number = `#,##0${decimals > 0 ? `.${'0'.repeat(decimals)}` : ''}`;
  return signBehind ? `${number} "${sign}"` : `"${sign}"${number}`;
};

export function patternOf(kind: Kind, notation: PatternNotation): string {
  const patterns: Readonly<Record<Kind, string>> = {
    general: 'General',
    number: '#,##0.00',
    percent: '0.0 %',
    euro: moneyPattern('€', notation),
    dollar: moneyPattern('$', { signBehind: false }),
    date: notation.date,
    time: 'hh:mm',
    text: '@',
  };
  return patterns[kind];
}

/** Without what it only quotes: letters in there are no part of the format. */
const bare = (pattern: string) => pattern.replace(/"[^"]*"|\\./g, '');

/** What kind a format is; one of another program may be none of these, and then it is a number. */
export function kindOf(pattern: string | undefined): Kind {
  if (!pattern || /^general$/i.test(pattern)) return 'general';
  if (pattern === '@') return 'text';
  if (pattern.includes('€')) return 'euro';
  if (pattern.includes('$') && !pattern.includes('[$')) return 'dollar';
  const letters = bare(pattern);
  if (letters.includes('%')) return 'percent';
  if (/[dy]/i.test(letters)) return 'date';
  if (/[hs]/i.test(letters)) return 'time';
  return 'number';
}

const MOST_DECIMALS = 10;

/** The same format with one decimal more or less; `shown` has the decimals of the number where there is no format yet. */
export function withDecimals(pattern: string | undefined, change: 1 | -1, shown: number): string {
  const kind = kindOf(pattern);
  const base =
    !pattern || kind === 'general' || kind === 'text' ? `0${shown > 0 ? `.${'0'.repeat(shown)}` : ''}` : pattern;
  if (kind === 'date' || kind === 'time') return base;
  return base.replace(/0(?:\.([0#]*))?(?=[^0.,#]*(?:$|;))/g, (_, decimals: string = '') => {
    const count = Math.min(MOST_DECIMALS, Math.max(0, decimals.length + change));
    return `0${count > 0 ? `.${'0'.repeat(count)}` : ''}`;
  });
}

/** The same format with groups of three digits, or without. */
export function withThousands(pattern: string | undefined, grouped: boolean): string {
  const kind = kindOf(pattern);
  const base = !pattern || kind === 'general' || kind === 'text' ? '0' : pattern;
  if (kind === 'date' || kind === 'time') return base;
  const plain = base.replace(/#,##0/g, '0');
  return grouped ? plain.replace(/(?<![0.#,])0/g, '#,##0') : plain;
}

export const isGrouped = (pattern: string | undefined): boolean => pattern?.includes('#,##0') ?? false;
