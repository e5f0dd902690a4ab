import { extent } from './extent.js';
import type { Line } from './line.js';

const heightAt = ({ intercept, slope }: Line, x: number): number => intercept + slope * x;

/** Standard error of the fitted line's height at a place; undefined where two points leave no freedom. */
export function heightError({ deviation, count, meanX, spreadX }: Line, x: number): number | undefined {
  return deviation === undefined ? undefined : deviation * Math.sqrt(1 / count + (x - meanX) ** 2 / spreadX);
}

export interface Bend {
  /** How far the points rise above the line's ends, of a parabola fitted to them, for half the span of x. */
  readonly sag: number;
  /** The parabola's coefficient over its standard error. */
  readonly significance: number;
}

/** Whether points curve away from their line: a parabola fitted to what the line leaves. Needs more than three. */
export function bend(line: Line, x: ArrayLike<number>, y: ArrayLike<number>): Bend | undefined {
  const { count, meanX, spreadX, residual } = line;
  if (count < 4) return undefined;
  let cubes = 0;
  for (let i = 0; i < count; i++) {
    const dx = (x[i] as number) - meanX;
    cubes += dx * dx * dx;
  }
  const level = spreadX / count;
  const tilt = cubes / spreadX;
  let along = 0;
  let square = 0;
  for (let i = 0; i < count; i++) {
    const dx = (x[i] as number) - meanX;
    const curved = dx * dx - level - tilt * dx;
    along += curved * ((y[i] as number) - heightAt(line, x[i] as number));
    square += curved * curved;
  }
  if (!(square > 0)) return undefined;
  const coefficient = along / square;
  const left = Math.max(0, residual - coefficient * along);
  const error = Math.sqrt(left / (count - 3) / square);
  return { sag: coefficient * (extent(x).span / 2) ** 2, significance: coefficient === 0 ? 0 : coefficient / error };
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
