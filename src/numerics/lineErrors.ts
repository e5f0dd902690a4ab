import { beyondRounding } from './extent.js';
import type { Line } from './line.js';
import { type ReadingErrors, readingErrors } from './readingErrors.js';

/** Places of the figures in the moments of `lineErrors`. */
export const INTERCEPT = 0;
export const SLOPE = 1;

/** How sure a line through readings of a gauge is that follow one another over x. */
export function lineErrors(line: Line, x: Float64Array, y: Float64Array): ReadingErrors | undefined {
  const { count, meanX, spreadX, slope, intercept } = line;
  const slopeWeights = x.map((one) => (one - meanX) / spreadX);
  return readingErrors([
    {
      places: x,
      residuals: beyondRounding(
        y.map((one, row) => one - intercept - slope * (x[row] as number)),
        y,
      ),
      design: [new Float64Array(count).fill(1), x.map((one) => one - meanX)],
      weights: [slopeWeights.map((one) => 1 / count - meanX * one), slopeWeights],
    },
  ]);
}
