import { beyondRounding, extent } from './extent.js';
import type { Moments, Uncertain } from './mixedErrors.js';
import { orderOf } from './order.js';
import { quantile } from './quantile.js';
import { type ReadingErrors, readingErrors } from './readingErrors.js';
import { dot, mean } from './sums.js';

/** A reading is far off from so many standard deviations on, as good readings have them. */
const CLIP = 3;
/** Standard deviations of a normal distribution in its median size. */
const DEVIATIONS = 1.4826;
/** Variance of the median slope over that of least squares where readings scatter normally (P. K. Sen, 1968). */
const EFFICIENCY = 3 / Math.PI;

const median = (values: Float64Array): number => quantile(Float64Array.from(values).sort(), 0.5);

interface RobustSlope {
  readonly errors: ReadingErrors | undefined;
  readonly slope: Uncertain | undefined;
  /** Readings far off. */
  readonly far: number;
}

/** Residuals in which those further off than so much are replaced by what stands between their neighbours. */
function bridged(x: Float64Array, residuals: Float64Array, far: number): Float64Array {
  const order = orderOf(x);
  const good = order.filter((row) => Math.abs(residuals[row] as number) <= far);
  const bridge = Float64Array.from(residuals);
  let passed = 0;
  for (const row of order) {
    if (Math.abs(residuals[row] as number) <= far) passed++;
    else {
      const [before, after] = [good[passed - 1] ?? good[passed], good[passed] ?? good[passed - 1]];
      bridge[row] = ((residuals[before as number] ?? 0) + (residuals[after as number] ?? 0)) / 2;
    }
  }
  return bridge;
}

/** How sure a median slope is: wild readings count for nothing but their number, neighbours may err together. */
export function robustErrors(slope: number, x: Float64Array, y: Float64Array): RobustSlope {
  const above = y.map((one, row) => one - slope * (x[row] as number));
  const middle = median(above);
  const residuals = beyondRounding(
    above.map((one) => one - middle),
    y,
  );
  const far = CLIP * DEVIATIONS * median(residuals.map(Math.abs));
  const wild = residuals.filter((one) => Math.abs(one) > far).length;
  const kept = 1 - wild / x.length;
  const meanX = mean(x);
  const away = x.map((one) => one - meanX);
  const spread = dot(away, away);
  const errors = readingErrors([
    {
      places: x,
      residuals: beyondRounding(
        bridged(x, residuals, far).map((one) => one / kept),
        y,
      ),
      design: [new Float64Array(x.length).fill(1), away],
      weights: [away.map((one) => one / spread)],
    },
  ]);
  const sure = extent(x).span > 0 ? errors?.of(([log]) => (log as Moments)(0, 0) / EFFICIENCY) : undefined;
  return { errors, slope: sure, far: wild };
}
