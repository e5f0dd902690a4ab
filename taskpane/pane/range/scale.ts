import type { Bounds } from '../../../src/core/input.js';

export interface Scale {
  /** Where a value stands on the bar, from 0 to 1; what lies outside stands at the nearer end. */
  readonly at: (value: number) => number;
  /** Powers of ten inside the bar, where equal steps are not equally long. */
  readonly decades: readonly number[];
}

const within = (share: number): number => Math.min(1, Math.max(0, share));
const DECADES_THAT_NEED_LOGARITHMS = 3;
/** Below this share of the bar a usual range would be a mere line. */
const TOO_NARROW = 0.1;

const MOST_DECADES = 9;

/** Powers of ten between two values; where there are very many, every second or third of them. */
function decadesBetween(from: number, to: number): number[] {
  const powers: number[] = [];
  for (let power = Math.ceil(Math.log10(from)); 10 ** power < to; power++)
    if (10 ** power > from) powers.push(10 ** power);
  const step = Math.ceil(powers.length / MOST_DECADES);
  return powers.filter((_, index) => index % step === 0);
}

/** Bends the start of the bar straight, so that 0 has a place on it: ln(1 + v / step). */
function logarithmicFromZero(most: number, step: number): Scale {
  const at = (value: number) => within(Math.log1p(Math.max(0, value) / step) / Math.log1p(most / step));
  return { at, decades: decadesBetween(step, most) };
}

/** The scale on which limits and usual range can both be seen. */
export function scaleOf({ limit: [least, most], usual }: Pick<Bounds, 'limit' | 'usual'>): Scale {
  const narrow = usual !== undefined && usual[1] - usual[0] < TOO_NARROW * (most - least);
  if (least > 0 && (narrow || Math.log10(most / least) > DECADES_THAT_NEED_LOGARITHMS)) {
    const at = (value: number) => (value <= least ? 0 : within(Math.log(value / least) / Math.log(most / least)));
    return { at, decades: decadesBetween(least, most) };
  }
  if (least === 0 && usual && usual[1] < TOO_NARROW * most) return logarithmicFromZero(most, usual[0] || usual[1] / 10);
  if (least === 0 && !usual && most >= 1e4) return logarithmicFromZero(most, Math.max(1, most / 1e6));
  return { at: (value) => within((value - least) / (most - least)), decades: [] };
}
