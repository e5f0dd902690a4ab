import { beyondRounding, extent } from './extent.js';
import type { Moments, Uncertain } from './mixedErrors.js';
import { orderOf } from './order.js';
import { pointErrors } from './pointErrors.js';
import { errorScale, figureWeights } from './spread.js';
import { mean } from './sums.js';

/** y = plateau + (start − plateau) e^(−rate x), fitted by least squares, with standard errors. */
export interface Decay {
  readonly start: number;
  readonly plateau: number;
  readonly rate: number;
  readonly startError: number;
  readonly plateauError: number;
  readonly rateError: number;
  /** How sure each is where points may scatter in proportion to the curve; standard errors above take them as alike. */
  readonly sure: Readonly<Record<'start' | 'plateau' | 'rate', Uncertain | undefined>>;
  /** Residual standard deviation. */
  readonly deviation: number;
  /** Share of the spread of y that the curve explains. */
  readonly rSquared: number;
  /** Where the curve has a given height between its value at the smallest x and its plateau. */
  reaches(height: number): number;
  /** How sure that place is. */
  reachesWithin(height: number, certainty?: number): Uncertain | undefined;
}

/** Why no such curve can be told from the data. */
export type NoDecay = 'no effect' | 'rising' | 'no plateau' | 'too steep';

const PARAMETERS = 3;
/** Rate × range of x: below the first the curve is a straight line, … */
const STRAIGHT = 1e-4;
/** … and rate × distance from the smallest x to the next: above this the curve is down before the next point. */
const STEEP = 14;
const STEPS_A_DECADE = 16;
/** Doses nearer than this share of their range say nothing of a rate; without a floor the search would never end. */
const NEAREST = 1e-12;
/** Scatter in proportion is taken no lower than for this share of the highest point. */
const LEAST_LEVEL = 0.02;
/** A fall that chance alone would show more often than this is no effect. */
const SIGNIFICANCE = 0.05;

/** The best curve for one rate: given the rate, the other two parameters are a straight-line fit. */
interface Trial {
  readonly rate: number;
  /** From the smallest x to the plateau; negative where the curve rises. */
  readonly fall: number;
  readonly first: number;
  readonly squares: number;
  /** Sign of the change of `squares` with the rate. */
  readonly trend: number;
}

function trialAt(rate: number, x: Float64Array, y: ArrayLike<number>): Trial {
  const count = x.length;
  const bent = x.map((one) => -Math.expm1(-rate * one));
  const meanBent = mean(bent);
  let meanY = 0;
  for (let i = 0; i < count; i++) meanY += (y[i] as number) / count;
  let bb = 0;
  let by = 0;
  for (let i = 0; i < count; i++) {
    const away = (bent[i] as number) - meanBent;
    bb += away * away;
    by += away * ((y[i] as number) - meanY);
  }
  const fall = bb > 0 ? -by / bb : 0;
  let squares = 0;
  let slope = 0;
  for (let i = 0; i < count; i++) {
    const residual = (y[i] as number) - meanY + fall * ((bent[i] as number) - meanBent);
    squares += residual * residual;
    slope += residual * (x[i] as number) * (1 - (bent[i] as number));
  }
  return { rate, fall, first: meanY + fall * meanBent, squares, trend: fall * slope };
}

/** Tries rates over decades, then closes in on the best by halving the bracket of its turning point. */
function bestTrial(x: Float64Array, y: ArrayLike<number>): Trial | NoDecay {
  const nearest = x.reduce((least, one) => (one > 0 && one < least ? one : least), 1);
  const steps = Math.ceil(Math.log10(STEEP / Math.max(nearest, NEAREST) / STRAIGHT) * STEPS_A_DECADE);
  const rateOf = (step: number): number => STRAIGHT * 10 ** (step / STEPS_A_DECADE);
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let step = 0; step <= steps; step++) {
    const { squares } = trialAt(rateOf(step), x, y);
    if (squares < least) [best, least] = [step, squares];
  }
  if (best === 0) return trialAt(STRAIGHT, x, y).fall > 0 ? 'no plateau' : 'rising';
  if (best === steps) return trialAt(rateOf(best), x, y).fall > 0 ? 'too steep' : 'rising';
  let low = rateOf(best - 1);
  let high = rateOf(best + 1);
  for (let middle = rateOf(best); middle > low && middle < high; middle = low + (high - low) / 2) {
    const { trend } = trialAt(middle, x, y);
    if (trend === 0) return trialAt(middle, x, y);
    if (trend < 0) low = middle;
    else high = middle;
  }
  return trialAt(low, x, y);
}

/** Whether y falls at every step of x: 4 points in a row do so by chance once in 24 times. */
function fallsThroughout(x: Float64Array, y: ArrayLike<number>): boolean {
  const order = orderOf(x);
  return order.every((point, index) => index === 0 || (y[point] as number) < (y[order[index - 1] as number] as number));
}

/** Chance that points without any effect fit the curve this well (F test of 2 parameters against the mean). */
const chanceOf = (unexplained: number, freedom: number): number => unexplained ** (freedom / 2);

/**
 * Fits the curve without any start value, to points in any order.
 * @param x at least 4, no two alike.
 */
export function fitDecay(x: ArrayLike<number>, y: ArrayLike<number>): Decay | NoDecay {
  const count = x.length;
  const { least: smallest, span: range } = extent(x);
  const scaled = Float64Array.from(x, (one) => (one - smallest) / range);
  const { squares: spread } = trialAt(0, scaled, y);
  if (!(spread > 0)) return 'no effect';
  const found = bestTrial(scaled, y);
  const squares = typeof found === 'string' ? trialAt(STRAIGHT, scaled, y).squares : found.squares;
  const unexplained = squares / spread;
  const freedom = count - PARAMETERS;
  const steady =
    fallsThroughout(scaled, y) ||
    fallsThroughout(
      scaled,
      Array.from(y, (one) => -one),
    );
  if (found !== 'too steep' && !steady && chanceOf(unexplained, freedom) > SIGNIFICANCE) return 'no effect';
  if (typeof found === 'string') return found;
  if (found.fall <= 0) return 'rising';
  const points = { x: scaled, y, offset: smallest / range, range };
  return describe(found, points, Math.sqrt(squares / freedom), 1 - unexplained);
}

/** Points with x from 0 to 1, and what that was: x = (scaled + offset) range. */
interface Scaled {
  readonly x: Float64Array;
  readonly y: ArrayLike<number>;
  readonly offset: number;
  readonly range: number;
}

function describe(
  { rate, fall, first }: Trial,
  { x, y, offset, range }: Scaled,
  deviation: number,
  rSquared: number,
): Decay | NoDecay {
  const plateau = first - fall;
  const left = x.map((one) => Math.exp(-rate * one));
  const design = [left, left.map((one) => 1 - one), x.map((one, point) => -fall * one * (left[point] as number))];
  const error = errorScale(design);
  const plateauError = deviation * error([0, 1, 0]);
  const rateError = deviation * error([0, 0, 1]);
  const seen = -fall * Math.expm1(-rate);
  if (!(plateauError < seen) || plateau + 2 * plateauError < 0) return 'no plateau';
  if (!(rateError < rate)) return 'too steep';
  const back = Math.exp(rate * offset);
  const weigh = figureWeights(design);
  const levels = left.map((one) => plateau + fall * one);
  const least = LEAST_LEVEL * Math.max(...levels);
  const residuals = beyondRounding(
    levels.map((level, point) => (y[point] as number) - level),
    y,
  );
  const sure = (gradient: readonly number[], certainty?: number) =>
    pointErrors(
      { residuals, design, weights: [weigh(gradient)] },
      levels.map((level) => Math.max(level, least)),
    )?.of(([only]) => (only as Moments)(0, 0), certainty);
  return {
    sure: {
      start: sure([back, 1 - back, fall * offset * back]),
      plateau: sure([0, 1, 0]),
      rate: sure([0, 0, 1 / range]),
    },
    start: plateau + fall * back,
    plateau,
    rate: rate / range,
    startError: deviation * error([back, 1 - back, fall * offset * back]),
    plateauError,
    rateError: rateError / range,
    deviation,
    rSquared,
    reaches: (height) => (offset + Math.log(fall / (height - plateau)) / rate) * range,
    reachesWithin: (height, certainty) => {
      const over = height - plateau;
      const byPlateau = (1 / over - 1 / fall) / rate;
      const gradient = [1 / (fall * rate), byPlateau, -Math.log(fall / over) / rate ** 2];
      return sure(
        gradient.map((one) => one * range),
        certainty,
      );
    },
  };
}
