import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';
import type { PlanValues } from '../core/input.js';
import { triangularDraw } from '../numerics/triangular.js';
import { type Ends, isLogarithmic, type Key, variedKeys } from './ranges.js';

/** A plan whose values are written anew for each sample. */
type Drawn = { [key: string]: number | undefined };

/** What one plan makes of a draw: low end and width of its range, or of its logarithms. */
interface Side {
  readonly plan: Drawn;
  readonly from: number;
  readonly width: number;
}

/** One uncertain figure, and the plans in which it stands. */
export interface Draw {
  readonly key: Key;
  readonly logarithmic: boolean;
  readonly side: Side;
  /** The other plan, where both share the figure. */
  readonly other: Side | undefined;
}

function sideOf(key: Key, { low, high }: Ends, plan: PlanValues): Side {
  const [from, to] = [low[key] as number, high[key] as number].map((end) => (isLogarithmic(key) ? Math.log(end) : end));
  return { plan: plan as Drawn, from: from as number, width: (to as number) - (from as number) };
}

interface Sides<T> {
  readonly present: T;
  readonly proposed: T;
}

/**
 * What is drawn for each sample. A label that is unsure in both plans is one and the same thing, so that one draw places
 * it between the ends of each; those that are told apart are drawn for each plan by itself.
 */
export function drawsInto(
  plans: Sides<PlanValues>,
  { present, proposed }: Sides<Ends>,
  apart: ReadonlySet<string> = new Set(),
): readonly Draw[] {
  const [inPresent, inProposed] = [variedKeys(present), variedKeys(proposed)];
  const isShared = (key: Key) => !apart.has(key) && inPresent.includes(key) && inProposed.includes(key);
  const draw = (key: Key, side: Side, other?: Side): Draw => ({ key, logarithmic: isLogarithmic(key), side, other });
  return [
    ...inPresent.map((key) =>
      draw(key, sideOf(key, present, plans.present), isShared(key) ? sideOf(key, proposed, plans.proposed) : undefined),
    ),
    ...inProposed.filter((key) => !isShared(key)).map((key) => draw(key, sideOf(key, proposed, plans.proposed))),
  ];
}

function place({ plan, from, width }: Side, key: Key, logarithmic: boolean, share: number): void {
  const drawn = from + width * share;
  plan[key] = logarithmic ? Math.exp(drawn) : drawn;
}

/** Draws every figure anew. */
export function draw(draws: readonly Draw[], generator: RandomGenerator): void {
  for (let index = 0; index < draws.length; index++) {
    const { key, logarithmic, side, other } = draws[index] as Draw;
    const share = triangularDraw(generator);
    place(side, key, logarithmic, share);
    if (other) place(other, key, logarithmic, share);
  }
}
