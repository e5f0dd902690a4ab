import { normalDeviates } from '../numerics/independent.js';

/** Chance of one fixed seed, drawn from again and again. */
export interface Chance {
  normal(): number;
}

export const chance = (seed: number): Chance => ({ normal: normalDeviates(seed) });

/** What stands on readings besides the truth; `heights` are the true readings. */
export type Noise = (heights: readonly number[], chance: Chance) => number[];

/** Standard deviation of a reading where the gauge is at its middle, bar. */
const BAR = 0.03;

const white: Noise = (heights, { normal }) => heights.map(() => BAR * normal());

/** Each reading’s error is so much of the last one’s. */
const chained =
  (correlation: number): Noise =>
  (heights, { normal }) => {
    let before = normal();
    return heights.map((_, row) => {
      if (row > 0) before = correlation * before + Math.sqrt(1 - correlation ** 2) * normal();
      return BAR * before;
    });
  };

/** In proportion to the reading. */
const growing: Noise = (heights, { normal }) => {
  const middle = heights.reduce((sum, one) => sum + one, 0) / heights.length;
  return heights.map((height) => (BAR * height * normal()) / middle);
};

/** A reading each minute: what wanders in quarters of an hour, and what the gauge adds each time. */
const minutes: Noise = (heights, given) => {
  const wandering = chained(0.7 ** (1 / 15))(heights, given);
  return wandering.map((one) => 0.7 * one + 0.7 * BAR * given.normal());
};

export const NOISES = { white, 'autocorrelated, 0.7': chained(0.7), growing, minutes } as const;

/** The first share by which runs of one powder differ, and a large one. */
export const RUN_TO_RUN = [0.03, 0.1] as const;
