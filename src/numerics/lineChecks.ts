import { extent } from './extent.js';
import { independentErrors } from './independentErrors.js';
import type { Line } from './line.js';
import type { Moments } from './mixedErrors.js';
import type { readingErrors } from './readingErrors.js';
import { dot } from './sums.js';

const heightAt = ({ intercept, slope }: Line, x: number): number => intercept + slope * x;

/** Standard error of the fitted line's height at a place; undefined where two points leave no freedom. */
export function heightError({ deviation, count, meanX, spreadX }: Line, x: number): number | undefined {
  return deviation === undefined ? undefined : deviation * Math.sqrt(1 / count + (x - meanX) ** 2 / spreadX);
}

export interface Bend {
  /** How far the points rise above the line's ends, of a parabola fitted to them, for half the span of x. */
  readonly sag: number;
  /** The parabola's coefficient over its standard error, and over what chance alone reaches in 95 % of cases. */
  readonly significance: number;
  readonly beyond: number;
}

/**
 * Whether points curve away from their line: a parabola fitted to what the line leaves. Needs more than three.
 * @param errors how sure such a coefficient is, of points that err on their own or of neighbours that err together.
 */
export function bend(
  line: Line,
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  errors: typeof readingErrors = independentErrors,
): Bend | undefined {
  const { count, meanX, spreadX } = line;
  if (count < 4) return undefined;
  const away = Float64Array.from(x, (one) => one - meanX);
  const level = spreadX / count;
  const tilt = away.reduce((sum, one) => sum + one ** 3, 0) / spreadX;
  const curved = away.map((one) => one * one - level - tilt * one);
  const square = dot(curved, curved);
  if (!(square > 0)) return undefined;
  const left = Float64Array.from(y, (one, row) => one - heightAt(line, x[row] as number));
  const coefficient = dot(curved, left) / square;
  const sure = errors([
    {
      places: away,
      residuals: left.map((one, row) => one - coefficient * (curved[row] as number)),
      design: [new Float64Array(count).fill(1), away, curved],
      weights: [curved.map((one) => one / square)],
    },
  ]);
  if (sure === undefined) return undefined;
  const { error, reach } = sure.of(([log]) => (log as Moments)(0, 0));
  const over = (chance: number) => (coefficient === 0 ? 0 : coefficient / chance);
  return { sag: coefficient * (extent(x).span / 2) ** 2, significance: over(error), beyond: over(reach) };
}

export interface Without {
  /** How far the point lies above the line through the others, and that over its standard error. */
  readonly away: number;
  readonly significance: number;
  /** Where the line through the others begins. */
  readonly intercept: number;
}

/** The line through all points but one, from the fit of all. Needs more than three. */
export function without(line: Line, x: number, y: number): Without | undefined {
  const { count, meanX, spreadX, residual, intercept } = line;
  if (count < 4) return undefined;
  const dx = x - meanX;
  const leverage = 1 / count + (dx * dx) / spreadX;
  const off = y - heightAt(line, x);
  const away = off / (1 - leverage);
  const left = Math.max(0, residual - off * away) / (count - 3);
  return {
    away,
    significance: off === 0 ? 0 : off / Math.sqrt(left * (1 - leverage)),
    intercept: intercept - away * (1 / count - (meanX * dx) / spreadX),
  };
}
