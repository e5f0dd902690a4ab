import type { Estimate } from '../../src/core/output.js';
import { type Chance, chance } from './noise.js';

/** Whether what was stated held the truth; undefined where the report says that it cannot know, or has no answer. */
export type Outcome = boolean | undefined;

/** What a function states, and a made case in which it is tried. */
export interface Claim {
  readonly id: string;
  readonly made: string;
  readonly noise: string;
  /** Share of cases in which the truth is claimed to be held. */
  readonly claimed: number;
  /** One made case; the outcome of each figure that is stated. */
  readonly once: (chance: Chance) => Readonly<Record<string, Outcome>>;
}

export interface Tally {
  readonly figure: string;
  /** Share of the answers that held; undefined where there was none. */
  readonly held: number | undefined;
  /** Share of the cases without a claim. */
  readonly unknown: number;
}

/** How often each figure of a claim held the truth. */
export function tallied({ once }: Claim, cases: number, seed: number): readonly Tally[] {
  const drawn = chance(seed);
  const found = new Map<string, { held: number; said: number }>();
  for (let one = 0; one < cases; one++) {
    for (const [figure, outcome] of Object.entries(once(drawn))) {
      const tally = found.get(figure) ?? { held: 0, said: 0 };
      found.set(figure, tally);
      if (outcome === undefined) continue;
      tally.said++;
      if (outcome) tally.held++;
    }
  }
  return [...found].map(([figure, { held, said }]) => ({
    figure,
    held: said > 0 ? held / said : undefined,
    unknown: 1 - said / cases,
  }));
}

/** Whether a figure lies within as many of its standard errors as the report says hold 95 %. */
export const within = ({ value, error }: Estimate, times: number | undefined, truth: number): Outcome =>
  error === undefined || times === undefined ? undefined : Math.abs(value - truth) <= times * error;

/** The same of a report that may say that it cannot know. */
export const unlessUnknown = (said: string, outcomes: Record<string, Outcome>): Record<string, Outcome> =>
  said.startsWith('hold') || said.startsWith('rough')
    ? outcomes
    : Object.fromEntries(Object.keys(outcomes).map((key) => [key, undefined]));
