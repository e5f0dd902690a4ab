import { type Notation, written } from './notation.js';
import type { Writing } from './writing.js';

export type NumberEntry =
  | {
      readonly kind: 'number';
      readonly value: number;
      readonly percent: boolean;
      readonly decimals: number;
      /** The format that shows it as it was typed: a date, a time, a sum of money. */
      readonly format?: string;
    }
  | { readonly kind: 'text' }
  | { readonly kind: 'refused'; readonly message: string };

/** A sheet keeps 15 digits; a longer number is a batch or order number and stays text. */
const MOST_DIGITS = 15;
/** Each character fits one place of it alone: where two places take spaces, a long row of them is tried for seconds. */
const LOOKS_NUMERIC = /^[+\-−]?(?=[.,'’\s]*\d)[\d.,'’\s]+(?:e[+-]?\d+\s*)?%?$/iu;
/** Characters of a text that may still be a number. */
export const LONGEST = 400;

/** Whether a text may be a number of some country's. */
export const looksNumeric = (text: string): boolean => text.length <= LONGEST && LOOKS_NUMERIC.test(text);

const inBrackets = (characters: string) => characters.replace(/[\]\\^.-]/g, '\\$&');

function pattern({ decimal, groups }: Notation): RegExp {
  // 0,333 has no group in it: nobody writes thousands with a nought in front.
  const whole = `\\d+|[1-9]\\d{0,2}([${inBrackets(groups)}])\\d{3}(?:\\2\\d{3})*`;
  return new RegExp(`^([+\\-−]?)\\s*(?:${whole})?(?:[${decimal}](\\d*))?(e[+\\-]?\\d+)?\\s*(%?)$`, 'iu');
}

/** Reads what was typed as a number of this notation; what could be read in two ways is refused. */
export function readNumber(typed: string, writing: Writing): NumberEntry {
  const { notation } = writing;
  const text = typed.trim();
  if (!looksNumeric(text)) return { kind: 'text' };
  const match = pattern(notation).exec(text);
  if (match) {
    const percent = match[5] === '%';
    const plain = [...text.replace('%', '')]
      .filter((character) => !notation.groups.includes(character))
      .join('')
      .replace(notation.decimal, '.')
      .replace('−', '-');
    if (plain.replace(/e.*$/i, '').replace(/\D/g, '').replace(/^0+/, '').length > MOST_DIGITS) return { kind: 'text' };
    const value = !percent ? Number(plain) : /e/i.test(plain) ? Number(plain) / 100 : Number(`${plain}e-2`);
    if (!Number.isFinite(value)) return { kind: 'text' };
    return { kind: 'number', value, percent, decimals: match[3]?.length ?? 0 };
  }
  return misread(text, writing);
}

/** One separator in a place where this notation has none: it may well be another country's decimal mark. */
function misread(text: string, { notation, words }: Writing): NumberEntry {
  const foreign = /^([+-]?\d*)[.,](\d+)\s*%?$/.exec(text);
  if (!foreign) return { kind: 'text' };
  const value = Number(`${foreign[1]}.${foreign[2]}`);
  const percent = text.endsWith('%') ? ' %' : '';
  return {
    kind: 'refused',
    message: `${words.noNumber(text, notation.decimal)} ${words.perhaps(`${written(value, notation)}${percent}`)}`,
  };
}
