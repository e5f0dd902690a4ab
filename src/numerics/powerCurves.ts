import type { Left } from './blocks.js';
import { beyondRounding, extent } from './extent.js';
import type { Moments } from './mixedErrors.js';
import { type ReadingErrors, readingErrors } from './readingErrors.js';
import { dot, mean as meanOf, spreadOf, total } from './sums.js';

/** The points of one run. */
export interface Points {
  /** None below 0, and at least one above. */
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** y = start + height (x / largest x)^power of one run. */
export interface PowerCurve {
  readonly start: number;
  readonly height: number;
  readonly largest: number;
  /** How far start and height fall where the power grows. */
  readonly startFalls: number;
  readonly heightFalls: number;
}

/** Variances of a run’s figures and of the power that it shares with the others. */
export interface PowerMoments {
  readonly start: number;
  readonly height: number;
  readonly power: number;
  /** Covariance of height and power. */
  readonly together: number;
}

/** Curves of several runs with one power in common, by least squares. */
export interface PowerCurves {
  readonly power: number;
  readonly curves: readonly PowerCurve[];
  /** Undefined where no freedom is left. */
  readonly errors: ReadingErrors | undefined;
  /** Residual standard deviation; undefined likewise. */
  readonly deviation: number | undefined;
  /** Share of the spread about each run's own mean that the curves explain. */
  readonly rSquared: number;
  /** The power lies at an end of what was looked through. */
  readonly atEnd: boolean;
}

/** Start and height as they follow the readings at a given power, and the power itself. */
const [START, HEIGHT, POWER] = [0, 1, 2] as const;

/** Variances of one run’s figures from those of the readings: start and height follow the power that all runs share. */
export function powerMoments(
  { startFalls, heightFalls }: PowerCurve,
  run: number,
  all: readonly Moments[],
  power = powerVariance(all),
): PowerMoments {
  const own = all[run] as Moments;
  return {
    start: own(START, START) - 2 * startFalls * own(START, POWER) + startFalls ** 2 * power,
    height: own(HEIGHT, HEIGHT) - 2 * heightFalls * own(HEIGHT, POWER) + heightFalls ** 2 * power,
    power,
    together: own(HEIGHT, POWER) - heightFalls * power,
  };
}

export const powerVariance = (all: readonly Moments[]): number => total(all, (run) => run(POWER, POWER));

const STEPS = 60;

/** Best start and height of one run at a power, and what they leave. */
interface Trial {
  readonly start: number;
  readonly height: number;
  readonly squares: number;
  /** How the squares change with the power, halved and with its sign turned. */
  readonly along: number;
  /** (x / largest)^power and its change with the power, each less its mean, and what the curve leaves. */
  readonly away: Float64Array;
  readonly turned: Float64Array;
  readonly residuals: Float64Array;
  /** Means and sums of squares about them, of both. */
  readonly count: number;
  readonly mean: number;
  readonly meanChange: number;
  readonly spread: number;
  readonly together: number;
  readonly changes: number;
}

function trialOf({ x, y }: Points, largest: number, power: number): Trial {
  const count = x.length;
  const shape = x.map((one) => (one / largest) ** power);
  const change = shape.map((one, i) => (one === 0 ? 0 : one * Math.log((x[i] as number) / largest)));
  const [mean, meanChange, meanY] = [meanOf(shape), meanOf(change), meanOf(y)];
  const away = shape.map((one) => one - mean);
  const turned = change.map((one) => one - meanChange);
  const spread = dot(away, away);
  const above = y.map((one) => one - meanY);
  const height = spread > 0 ? dot(away, above) / spread : 0;
  const residuals = above.map((one, i) => one - height * (away[i] as number));
  return {
    start: meanY - height * mean,
    height,
    squares: dot(residuals, residuals),
    along: height * dot(residuals, change),
    away,
    turned,
    residuals,
    count,
    mean,
    meanChange,
    spread,
    together: dot(away, turned),
    changes: dot(turned, turned),
  };
}

/** Fits all runs without any start value: tries powers between both ends, then halves the bracket of the turning point. */
export function fitPowerCurves(runs: readonly Points[], [least, most]: readonly [number, number]): PowerCurves {
  const largest = runs.map(({ x }) => extent(x).most);
  const at = (power: number) => runs.map((run, index) => trialOf(run, largest[index] as number, power));
  const powerOf = (step: number) => least * (most / least) ** (step / STEPS);
  const squaresAt = Array.from({ length: STEPS + 1 }, (_, step) => total(at(powerOf(step)), ({ squares }) => squares));
  const best = squaresAt.indexOf(Math.min(...squaresAt));
  let low = powerOf(Math.max(0, best - 1));
  let high = powerOf(Math.min(STEPS, best + 1));
  for (let middle = powerOf(best); middle > low && middle < high; middle = low + (high - low) / 2) {
    if (total(at(middle), ({ along }) => along) > 0) low = middle;
    else high = middle;
  }
  return describe(runs, largest, at(low), low, best === 0 || best === STEPS);
}

function describe(
  runs: readonly Points[],
  largest: readonly number[],
  trials: readonly Trial[],
  power: number,
  atEnd: boolean,
): PowerCurves {
  const freedom = total(trials, ({ count }) => count - 2) - 1;
  const squares = total(trials, (one) => one.squares);
  // What each run says of the power once its start and height are free to follow.
  const own = ({ height, changes, together, spread }: Trial) => height ** 2 * (changes - together ** 2 / spread);
  const known = total(trials, own);
  const curves = trials.map(({ start, height, together, spread, mean, meanChange }, index): PowerCurve => {
    const heightFalls = (height * together) / spread;
    const startFalls = height * meanChange - heightFalls * mean;
    return { start, height, largest: largest[index] as number, startFalls, heightFalls };
  });
  const left = trials.map(({ away, turned, residuals, count, start, height, together, spread, mean }, index): Left => {
    const heights = away.map((one) => one / spread);
    return {
      // Scatter grows with the pressure, which grows with x.
      places: away.map((one) => start + height * (one + mean)),
      residuals: beyondRounding(residuals, (runs[index] as Points).y),
      design: [new Float64Array(count).fill(1), away, turned],
      weights: [
        heights.map((one) => 1 / count - mean * one),
        heights,
        turned.map((one, i) => (height * (one - together * (heights[i] as number))) / known),
      ],
    };
  });
  const spread = total(runs, ({ y }) => spreadOf(y));
  return {
    power,
    curves,
    errors: freedom > 0 ? readingErrors(left) : undefined,
    deviation: freedom > 0 ? Math.sqrt(squares / freedom) : undefined,
    rSquared: 1 - squares / spread,
    atEnd,
  };
}
