import type { Line } from '../numerics/line.js';
import { INTERCEPT, lineErrors, SLOPE } from '../numerics/lineErrors.js';
import type { Moments } from '../numerics/mixedErrors.js';
import { errorsRemark, timesOf } from './errorFields.js';

/** How sure a line through the readings of a log is, and what the report says of it. */
export function sureness(line: Line, x: Float64Array, y: Float64Array) {
  const errors = lineErrors(line, x, y);
  const of = (which: number) => errors?.of(([log]) => (log as Moments)(which, which));
  const [intercept, slope] = [of(INTERCEPT), of(SLOPE)];
  return {
    intercept,
    slope,
    told: {
      autocorrelation: errors?.autocorrelation,
      independent: independentReadings(line, slope?.error),
      times: timesOf([intercept, slope]),
      errors: errorsRemark(errors),
    },
  };
}

/** So many independent readings alike would tell the slope as well. */
function independentReadings({ count, slopeError }: Line, error: number | undefined): number | undefined {
  if (slopeError === undefined || error === undefined) return undefined;
  return error > 0 ? Math.min(count, count * (slopeError / error) ** 2) : count;
}
