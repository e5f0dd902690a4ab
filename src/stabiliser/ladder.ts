import { fromSI } from '../core/units.js';
import { plainNumber } from '../core/wording.js';
import { fitDecay, type NoDecay } from '../numerics/decay.js';
import { dose, haze } from '../quantities.js';

/** A dose ladder: the same beer with several doses of one stabiliser, each with its haze. */
export const ladder = {
  doses: {
    kind: 'series',
    least: 4,
    label: 'Doses',
    unit: dose.unit,
    limit: dose.limit,
    help: 'One stabiliser at several doses in the same beer, in any order; best from 0 up to more than you mean to use.',
    source: dose.source,
  },
  hazes: {
    kind: 'series',
    least: 4,
    label: 'Hazes',
    unit: haze.unit,
    limit: [0.001, 1000],
    usual: haze.usual,
    help: 'Haze of each dose after forcing or chilling, all by one method.',
    source: `${haze.source} A haze of exactly 0 is taken for a blank cell.`,
  },
} as const;

/** Haze to reach, by the method of the ladder. */
export const target = {
  ...haze,
  label: 'Target',
  limit: [0.001, 1000],
  help: 'Haze to reach, by the method of the ladder.',
} as const;

export const LADDER_SOURCES = [
  'Least squares; given the rate the other two parameters are linear, so that only the rate is searched for (Golub and Pereyra, SIAM Journal on Numerical Analysis 10 (1973) 413; reference from memory).',
  'The curve is a model without a standard behind it: each further g/hL takes away the same share of the haze that can still be removed.',
] as const;

interface Ladder {
  readonly doses: Float64Array;
  readonly hazes: Float64Array;
}

/** A dose that stands twice: a slip of the pen, or two readings that belong averaged. */
export function repeatedDose({ doses }: Ladder): string | undefined {
  const rows = new Map<number, number>();
  for (const [row, one] of doses.entries()) {
    const before = rows.get(one);
    if (before !== undefined) {
      // The way to SI and back can cost the sixteenth digit.
      const shown = plainNumber(Number(fromSI(one, ladder.doses.unit).toPrecision(15)));
      return `Doses, row ${row + 1}, repeats row ${before + 1}: ${shown} ${ladder.doses.unit}. Give each dose once, with the mean of its hazes.`;
    }
    rows.set(one, row);
  }
  return undefined;
}

const REASONS: Readonly<Record<NoDecay, string>> = {
  'no effect':
    'The data hold no effect that can be told from chance: the hazes do not fall with the dose beyond their scatter (5 % level).',
  rising: 'The data hold no effect: the hazes rise with the dose.',
  'no plateau':
    'The data hold no plateau: the hazes fall nearly in a straight line, or too unsteadily to tell where they end. Try larger doses, or more of them.',
  'too steep':
    'The data hold no rate: the haze is down on its plateau at the first dose or too near it to tell. Try smaller doses.',
};

/** The curve through a dose ladder in SI, or why there is none. */
export function fitLadder({ doses, hazes }: Ladder) {
  const fitted = fitDecay(doses, hazes);
  return typeof fitted === 'string' ? { none: REASONS[fitted] } : fitted;
}
