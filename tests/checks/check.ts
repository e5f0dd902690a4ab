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
  /** Of a report: the label of the row that holds the figure. */
  readonly row?: string;
}

/** What a source prints to some decimals, as a relative tolerance. */
export const printed = (expected: number, decimals: number): number =>
  (0.500_001 * 10 ** -decimals) / Math.abs(expected);

/** The cell that a check looks at, or what stands there instead of an answer. */
export function answerTo({ calculation, given, row }: PublishedCheck): unknown {
  const declared = catalogue.find(({ id }) => id === calculation);
  if (!declared) throw new Error(`${calculation} is not in the catalogue.`);
  const answer = evaluateCells(declared, given);
  if (isRefused(answer)) return answer.refused;
  if (isNoAnswer(answer)) return answer.none;
  return row === undefined ? answer[0]?.[0] : answer.find(([label]) => label === row)?.[1];
}

const shown = (handed: Handed): string =>
  Array.isArray(handed)
    ? `{${handed.length > 4 ? `${handed.slice(0, 4).join('; ')}; …` : handed.join('; ')}}`
    : typeof handed === 'object' && handed !== null
      ? 'a plan'
      : String(handed);

/** What the worksheet was handed, in short. */
export const givenInWords = (given: PublishedCheck['given']): string => Object.values(given).map(shown).join(', ');

/** The check as a sentence. */
export function titleOf({ calculation, given, expected, row, source, kind }: PublishedCheck): string {
  const of = row === undefined ? '' : ` as ${row}`;
  return `${calculation}(${givenInWords(given)}) gives ${expected}${of}, ${kind}: ${source}`;
}
