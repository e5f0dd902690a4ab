import type { Left } from './blocks.js';
import type { Moments } from './mixedErrors.js';
import type { ReadingErrors } from './readingErrors.js';
import { studentQuantile } from './student.js';
import { dot, total } from './sums.js';

const CERTAINTY = 0.95;

/**
 * How sure a fit to points is that err each on its own and alike: tests, doses, whole runs. Student’s t, no more.
 * @returns undefined where no freedom is left.
 */
export function independentErrors(logs: readonly Left[]): ReadingErrors | undefined {
  const points = total(logs, ({ residuals }) => residuals.length);
  const freedom = points - Math.max(...logs.map(({ design }) => design.length));
  if (!(freedom > 0)) return undefined;
  const squares = total(logs, ({ residuals }) => dot(residuals, residuals));
  const moments = logs.map(
    ({ weights }): Moments =>
      (one, other) =>
        (squares / freedom) * dot(weights[one] as Float64Array, weights[other] as Float64Array),
  );
  return {
    told: true,
    autocorrelation: 0,
    mean: (moment) => moment(moments),
    of: (variance, certainty = CERTAINTY) => {
      const error = Math.sqrt(variance(moments));
      return { error, reach: error * studentQuantile(certainty, freedom) };
    },
  };
}
