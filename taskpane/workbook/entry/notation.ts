import { type DateNotation, dateNotationOf } from './date.js';

/** How the user's language writes numbers and dates. */
export interface Notation {
  readonly decimal: '.' | ',';
  /** Characters that may stand between groups of three digits. */
  readonly groups: string;
  readonly dates: DateNotation;
}

const SPACES = ' \u00a0\u202f';

export function notationOf(locale: string): Notation {
  const parts = new Intl.NumberFormat(locale, { useGrouping: 'always' }).formatToParts(-1234567.8);
  const of = (type: string) => parts.find((part) => part.type === type)?.value ?? '';
  const decimal = of('decimal') === ',' ? ',' : '.';
  const group = of('group');
  // Swiss German groups with either form of the apostrophe; spaces are understood everywhere.
  const groups = /['’]/.test(group) ? "'’" : SPACES.includes(group) ? '' : group;
  return { decimal, groups: groups.replace(decimal, '') + SPACES, dates: dateNotationOf(locale) };
}

/** A number as this notation writes it, all digits kept. */
export function written(value: number, { decimal }: Notation): string {
  return String(value).replace('.', decimal);
}
