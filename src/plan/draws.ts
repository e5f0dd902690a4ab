import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';
import type { PlanValues } from '../core/input.js';
import { triangularDraw } from '../numerics/triangular.js';
import { type Ends, isLogarithmic, type Key, variedKeys } from './ranges.js';

/** A plan whose values are written anew for each sample. */
type Drawn = { [key: string]: number | undefined };

/** One uncertain figure, and the plans in which it stands. */
export interface Draw {
  readonly key: Key;
  readonly logarithmic: boolean;
  /** Low end and width of the range, or of its logarithms. */
  readonly from: number;
  readonly width: number;
  readonly plan: Drawn;
  /** The other plan, where both share the figure. */
  readonly other: Drawn | undefined;
}

const isShared = (key: Key, one: Ends, other: Ends): boolean =>
  one.low[key] === other.low[key] && one.high[key] === other.high[key];

function drawOf(key: Key, { low, high }: Ends, plan: PlanValues, other?: PlanValues): Draw {
  const logarithmic = isLogarithmic(key);
  const [from, to] = [low[key] as number, high[key] as number].map((end) => (logarithmic ? Math.log(end) : end));
  return {
    key,
    logarithmic,
    from: from as number,
    width: (to as number) - (from as number),
    plan: plan as Drawn,
    other: other as Drawn | undefined,
  };
}

interface Sides<T> {
  readonly present: T;
  readonly proposed: T;
}

/** What is drawn for each sample: a label with the same ends in both plans once, any other for each plan by itself. */
export function drawsInto(plans: Sides<PlanValues>, { present, proposed }: Sides<Ends>): readonly Draw[] {
  const shared = (key: Key) => isShared(key, present, proposed);
  return [
    ...variedKeys(present).map((key) => drawOf(key, present, plans.present, shared(key) ? plans.proposed : undefined)),
    ...variedKeys(proposed)
      .filter((key) => !shared(key))
      .map((key) => drawOf(key, proposed, plans.proposed)),
  ];
}

/** Draws every figure anew. */
export function draw(draws: readonly Draw[], generator: RandomGenerator): void {
  for (let index = 0; index < draws.length; index++) {
    const { key, logarithmic, from, width, plan, other } = draws[index] as Draw;
    const drawn = from + width * triangularDraw(generator);
    const value = logarithmic ? Math.exp(drawn) : drawn;
    plan[key] = value;
    if (other) other[key] = value;
  }
}
