import { FIRST_OF_MARCH_1900, LATEST, serialOf } from '../formula/serialDate.js';

/** Two digits of a year up to this one belong to the present century (common practice, no source). */
const PIVOT = 29;

/** A day as a worksheet counts it; undefined where the calendar has none, and before March 1900. */
export function dayOf(year: number, month: number, day: number): number | undefined {
  const date = new Date(Date.UTC(year, month - 1, day));
  if (date.getUTCFullYear() !== year || date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return undefined;
  const serial = serialOf(date.getTime());
  return serial >= FIRST_OF_MARCH_1900 && serial <= LATEST ? serial : undefined;
}

/** How a language writes a date: its order, and the marks between its parts. */
export interface DateNotation {
  readonly order: 'dmy' | 'mdy' | 'ymd';
  readonly mark: string;
  /** The same in the worksheet's own notation, such as `dd.mm.yyyy`. */
  readonly pattern: string;
}

const PARTS: Readonly<Record<string, string>> = { day: 'dd', month: 'mm', year: 'yyyy' };

export function dateNotationOf(locale: string): DateNotation {
  const options = { day: '2-digit', month: '2-digit', year: 'numeric' } as const;
  const parts = new Intl.DateTimeFormat(locale, options).formatToParts(new Date(2000, 10, 22));
  const order = parts.flatMap(({ type }) => (type in PARTS ? [type[0]] : [])).join('');
  return {
    order: order === 'mdy' || order === 'ymd' ? order : 'dmy',
    mark: (parts.find(({ type }) => type === 'literal')?.value ?? '/').trim().slice(0, 1),
    pattern: parts.map(({ type, value }) => PARTS[type] ?? value).join(''),
  };
}

interface Moment {
  /** Days, a part of one for the time. */
  readonly value: number;
  readonly format: string;
}

const ISO = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/;
const TIME = /^(\d{1,4}):([0-5]\d)(?::([0-5]\d)(?:[.,](\d{1,9}))?)?(?:\s*([ap])m)?$/i;
/** A sheet shows no part of a second smaller than this many digits. */
const PARTS_OF_A_SECOND = 3;
/** What follows a moment that says where on the globe its clock stands; the clock is taken as it was written. */
const OFFSET = /(?:Z|[+-]\d{2}:?\d{2})$/;

function readTime(text: string): Moment | undefined {
  const match = TIME.exec(text);
  if (!match) return undefined;
  const [, hours, minutes, seconds, part, half] = match;
  const given = Number(hours);
  if (half && (given > 12 || given === 0)) return undefined;
  const hour = half ? (given % 12) + (half.toLowerCase() === 'p' ? 12 : 0) : given;
  const value = (hour * 3600 + Number(minutes) * 60 + Number(`${seconds ?? 0}.${part ?? 0}`)) / 86_400;
  const behind = part ? `.${'0'.repeat(Math.min(part.length, PARTS_OF_A_SECOND))}` : '';
  return { value, format: `${hour >= 24 ? '[h]' : 'hh'}:mm${seconds ? ':ss' : ''}${behind}` };
}

/** With points a day without its year ends in one, as 3.4. does; 3.4 may be a number, and 5-10 a range. */
const WRITTEN: Readonly<Record<string, RegExp>> = {
  '.': /^(\d{1,2})\.\s?(\d{1,2})\.(?:\s?(\d{4}|\d{2}))?$/,
  '-': /^(\d{1,2})-(\d{1,2})-(\d{4}|\d{2})$/,
};
const SLASHED = /^(\d{1,2})\/(\d{1,2})(?:\/(\d{4}|\d{2}))?$/;

const fullYear = (year: string): number => {
  if (year.length > 2) return Number(year);
  return Number(year) + (Number(year) <= PIVOT ? 2000 : 1900);
};

function readDay(text: string, { order, mark, pattern }: DateNotation, now: Date): Moment | undefined {
  const iso = ISO.exec(text);
  if (iso) {
    const value = dayOf(Number(iso[1]), Number(iso[3]), Number(iso[4]));
    return value === undefined ? undefined : { value, format: 'yyyy-mm-dd' };
  }
  const match = WRITTEN[mark]?.exec(text) ?? SLASHED.exec(text);
  if (!match) return undefined;
  const [first, second] = [Number(match[1]), Number(match[2])];
  const [day, month] = order === 'mdy' ? [second, first] : [first, second];
  const value = dayOf(match[3] ? fullYear(match[3]) : now.getFullYear(), month, day);
  return value === undefined ? undefined : { value, format: pattern };
}

/** A date in the order of the language or in ISO form, a time, or both; undefined for anything else. */
export function readMoment(typed: string, notation: DateNotation, now = new Date()): Moment | undefined {
  const text = typed.trim();
  const only = readTime(text) ?? readDay(text, notation, now);
  if (only) return only;
  const both = /^(\S+(?:\.\s?\d{4})?)(?:T|,?\s+)(\d{1,2}:.*)$/.exec(text);
  const [day, time] = [readDay(both?.[1] ?? '', notation, now), readTime(both?.[2]?.replace(OFFSET, '') ?? '')];
  if (!day || !time || time.value >= 1) return undefined;
  return { value: day.value + time.value, format: `${day.format} ${time.format}` };
}
