import { catalogue } from '../../src/catalogue.js';
import { evaluateCells, type Handed, isNoAnswer } from '../../src/core/evaluate.js';
import { isRefused } from '../../src/core/read.js';

/**
 * `published`: the figure stands in the source. `derived`: reckoned by hand from figures or definitions of the
 * source. `from memory`: the source was not read again.
 */
export type CheckKind = 'published' | 'derived' | 'from memory';

/** A figure from outside that a calculation must reproduce. */
export interface PublishedCheck {
  readonly calculation: Uppercase<string>;
  /** The worksheet's arguments by key, in the units of the cells. */
  readonly given: Readonly<Record<string, Handed>>;
  readonly expected: number | string;
  /** Relative; half a step of the last printed digit where the source rounds. Not read for texts. */
  readonly tolerance: number;
  readonly source: string;
  readonly kind: CheckKind;
  /** Of a report or a table: the row that holds the figure, by the text that stands in it, or −1 for the last one. */
  readonly row?: string | -1;
  /** Of a table: the heading of the figure's column; left out, the second one. */
  readonly column?: string;
  /** Why the tolerance is wider than half a step of the printed digit. */
  readonly wider?: string;
  /** Figures of one table that try one and the same step of arithmetic: together they count as one check. */
  readonly table?: string;
}

/** Half a step of the last digit of a figure as it is written, relative to it. */
export function halfStep(expected: number): number {
  const [digits = '', exponent] = expected.toExponential().split('e');
  return printed(expected, (digits.split('.')[1] ?? '').length - Number(exponent));
}

/** What a source prints to some decimals, as a relative tolerance. */
export const printed = (expected: number, decimals: number): number =>
  (0.500_001 * 10 ** -decimals) / Math.abs(expected);

/** The cell that a check looks at, or what stands there instead of an answer. */
export function answerTo({ calculation, given, row, column }: PublishedCheck): unknown {
  const declared = catalogue.find(({ id }) => id === calculation);
  if (!declared) throw new Error(`${calculation} is not in the catalogue.`);
  const answer = evaluateCells(declared, given);
  if (isRefused(answer)) return answer.refused;
  if (isNoAnswer(answer)) return answer.none;
  if (row === undefined) return answer[0]?.[0];
  const cells = row === -1 ? answer.at(-1) : answer.find((one) => one.some((cell) => String(cell) === row));
  return cells?.[column === undefined ? 1 : (answer[0]?.indexOf(column) ?? -1)];
}

const shown = (handed: Handed): string =>
  Array.isArray(handed)
    ? `{${handed.length > 4 ? `${handed.slice(0, 4).join('; ')}; …` : handed.join('; ')}}`
    : typeof handed === 'object' && handed !== null
      ? 'a plan'
      : String(handed);

/** What the worksheet was handed, in short. */
export const givenInWords = (given: PublishedCheck['given']): string => Object.values(given).map(shown).join(', ');

/** Where in a report or a table the figure stands, in words. */
export const placeInWords = ({ row, column }: Pick<PublishedCheck, 'row' | 'column'>): string =>
  [row === -1 ? 'last row' : row, column].filter((part) => part !== undefined).join(', ');

/** The check as a sentence. */
export function titleOf(check: PublishedCheck): string {
  const { calculation, given, expected, source, kind } = check;
  const place = placeInWords(check);
  return `${calculation}(${givenInWords(given)}) gives ${expected}${place && ` as ${place}`}, ${kind}: ${source}`;
}
