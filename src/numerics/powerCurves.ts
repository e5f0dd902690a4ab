import { extent } from './extent.js';

/** The points of one run. */
export interface Points {
  /** None below 0, and at least one above. */
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** y = start + height (x / largest x)^power of one run, with variances. */
export interface PowerCurve {
  readonly start: number;
  readonly height: number;
  readonly largest: number;
  readonly startVariance: number;
  readonly heightVariance: number;
  /** Covariance of height and power. */
  readonly covariance: number;
}

/** Curves of several runs with one power in common, by least squares. */
export interface PowerCurves {
  readonly power: number;
  readonly variance: number;
  readonly curves: readonly PowerCurve[];
  /** Residual standard deviation; undefined, as are then all variances, where no freedom is left. */
  readonly deviation: number | undefined;
  /** Share of the spread about each run's own mean that the curves explain. */
  readonly rSquared: number;
  /** The power lies at an end of what was looked through. */
  readonly atEnd: boolean;
}

const STEPS = 60;

/** Best start and height of one run at a power, and what they leave. */
interface Trial {
  readonly start: number;
  readonly height: number;
  readonly squares: number;
  /** How the squares change with the power, halved and with its sign turned. */
  readonly along: number;
  /** Means and sums of squares about them, of (x / largest)^power and of its change with the power. */
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
  const meanOf = (values: Float64Array) => values.reduce((sum, one) => sum + one, 0) / count;
  const [mean, meanChange, meanY] = [meanOf(shape), meanOf(change), meanOf(y)];
  let spread = 0;
  let rise = 0;
  let together = 0;
  let changes = 0;
  for (let i = 0; i < count; i++) {
    const away = (shape[i] as number) - mean;
    const turned = (change[i] as number) - meanChange;
    spread += away * away;
    rise += away * ((y[i] as number) - meanY);
    together += away * turned;
    changes += turned * turned;
  }
  const height = spread > 0 ? rise / spread : 0;
  let squares = 0;
  let along = 0;
  for (let i = 0; i < count; i++) {
    const residual = (y[i] as number) - meanY - height * ((shape[i] as number) - mean);
    squares += residual * residual;
    along += residual * height * (change[i] as number);
  }
  return { start: meanY - height * mean, height, squares, along, count, mean, meanChange, spread, together, changes };
}

const total = <T>(list: readonly T[], of: (one: T) => number): number => list.reduce((sum, one) => sum + of(one), 0);

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
  const noise = freedom > 0 ? squares / freedom : Number.NaN;
  // What each run says of the power once its start and height are free to follow.
  const own = ({ height, changes, together, spread }: Trial) => height ** 2 * (changes - together ** 2 / spread);
  const variance = noise / total(trials, own);
  const curves = trials.map((trial, index): PowerCurve => {
    const follows = (trial.height * trial.together) / trial.spread;
    const lifts = trial.height * trial.meanChange - follows * trial.mean;
    return {
      start: trial.start,
      height: trial.height,
      largest: largest[index] as number,
      startVariance: noise * (1 / trial.count + trial.mean ** 2 / trial.spread) + lifts ** 2 * variance,
      heightVariance: noise / trial.spread + follows ** 2 * variance,
      covariance: -follows * variance,
    };
  });
  const spread = total(runs, ({ y }) => {
    const mean = y.reduce((sum, one) => sum + one, 0) / y.length;
    return y.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  });
  return {
    power,
    variance,
    curves,
    deviation: freedom > 0 ? Math.sqrt(noise) : undefined,
    rSquared: 1 - squares / spread,
    atEnd,
  };
}
