import type { Estimate } from '../core/output.js';
import { timesOf } from '../errors/errorFields.js';
import { estimate } from '../errors/estimate.js';
import { extent } from '../numerics/extent.js';
import type { Moments, Uncertain } from '../numerics/mixedErrors.js';
import {
  fitPowerCurves,
  type PowerCurve,
  type PowerCurves,
  type PowerMoments,
  powerMoments,
  powerVariance,
} from '../numerics/powerCurves.js';
import type { ReadingErrors } from '../numerics/readingErrors.js';
import { compressibility } from './inputs.js';
import { flatLoad, REFERENCE, type Septum } from './pressureDrop.js';

/** Exponents looked through, as powers of the load: a little beyond what a cake has, so that scatter shows as such. */
const POWERS = [1 / (1 + 2), 1 / (1 - 0.95)] as const;

/** The log of one run at constant flow, SI. */
export interface Log {
  readonly volumes: Float64Array;
  readonly bars: Float64Array;
  readonly area: number;
  readonly flow: number;
  readonly viscosity: number;
  readonly solids: number;
  readonly septum: Septum;
  readonly precoatLoad: number;
}

/** A compressible cake fitted to one log. */
export interface Squeezed {
  readonly start: Estimate;
  /** At 1 bar. */
  readonly resistance: Estimate;
  /** Standard errors that hold the truth in 95 % of logs. */
  readonly times: number | undefined;
  /** Of the resistance’s logarithm with the exponent. */
  readonly correlation: number | undefined;
  /** Mean over the log, Pa/s. */
  readonly rise: number;
  /** Hours of beer at the first and the last reading, s. */
  readonly from: number;
  readonly until: number;
  /** Pressure drop over the cake at the last reading, Pa. */
  readonly reached: number;
}

interface SqueezedRuns {
  readonly exponent: Estimate;
  readonly runs: readonly Squeezed[];
  readonly deviation: number | undefined;
  readonly rSquared: number;
  /** Exponent of the free fit over what chance reaches in 95 % of logs: below 0 where the exponent was held at 0. */
  readonly beyond: number;
  readonly errors: ReadingErrors | undefined;
  readonly atEnd: boolean;
}

const flatLoads = ({ volumes, area, solids, septum, precoatLoad }: Log): Float64Array =>
  volumes.map((volume) => flatLoad((solids * volume) / area, septum, precoatLoad));

/** Δp = start + height (w / w_end)^power gives n = 1 − 1/power, and α from height = μ u α w_end (height / 1 bar)^n. */
function squeezed(log: Log, curve: PowerCurve, power: number, variances: VariancesOf): Squeezed {
  const { start, height, largest } = curve;
  const perLoad = (log.viscosity * log.flow) / log.area;
  const logarithm = Math.log(height / REFERENCE);
  const resistance = (REFERENCE / (perLoad * largest)) * Math.exp(logarithm / power);
  const byHeight = 1 / (power * height);
  const byPower = -logarithm / power ** 2;
  const relative = (of: PowerMoments) =>
    byHeight ** 2 * of.height + 2 * byHeight * byPower * of.together + byPower ** 2 * of.power;
  const withPower = (of: PowerMoments) => byHeight * of.together + byPower * of.power;
  const sure = variances((of) => resistance ** 2 * relative(of));
  const sureStart = variances(({ start }) => start);
  const loads = extent(flatLoads(log));
  const { least, span } = extent(log.volumes);
  const gained = height * (1 - (loads.least / largest) ** power);
  return {
    start: estimate(start, sureStart),
    resistance: estimate(resistance, sure),
    times: timesOf([sure, sureStart, variances(({ power }) => power)]),
    correlation: told(
      variances.mean(withPower) / Math.sqrt(variances.mean(relative) * variances.mean(({ power }) => power)),
    ),
    rise: (gained * log.flow) / span,
    from: least / log.flow,
    until: (least + span) / log.flow,
    reached: height,
  };
}

const told = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);

type OfMoments = (of: PowerMoments) => number;

/** How sure a figure of one run is, by its variance. */
interface VariancesOf {
  (variance: OfMoments): Uncertain | undefined;
  mean(moment: OfMoments): number;
}

/** The moments of one run; what all runs say of the power is summed once for each autocorrelation. */
function variancesOf({ curves, errors }: PowerCurves): (run: number) => VariancesOf {
  const powers = new Map<readonly Moments[], number>();
  const powerOf = (all: readonly Moments[]): number => {
    const known = powers.get(all) ?? powerVariance(all);
    powers.set(all, known);
    return known;
  };
  return (run) => {
    const momentsOf = (all: readonly Moments[]) => powerMoments(curves[run] as PowerCurve, run, all, powerOf(all));
    const of = (variance: OfMoments) => errors?.of((all) => variance(momentsOf(all)));
    return Object.assign(of, {
      mean: (moment: OfMoments) => errors?.mean((all) => moment(momentsOf(all))) ?? Number.NaN,
    });
  };
}

const exponentOf = ({ power, errors }: PowerCurves): Estimate & { readonly reach: number } => {
  const sure = errors?.of(powerVariance);
  return {
    ...estimate(1 - 1 / power, sure && { ...sure, error: sure.error / power ** 2 }),
    reach: (sure?.reach ?? Number.NaN) / power ** 2,
  };
};

/** Fits one exponent to all logs, and to each its own start and resistance; or the number of the log without a rise. */
export function fitSqueezed(logs: readonly Log[]): SqueezedRuns | number {
  const flat = logs.findIndex(({ volumes }) => !(extent(volumes).span > 0));
  if (flat >= 0) return flat;
  const points = logs.map((log) => ({ x: flatLoads(log), y: log.bars }));
  const free = fitPowerCurves(points, POWERS);
  // No cake eases under pressure: half of all rigid cakes would come out a little below 0 by scatter alone.
  const fit = free.power < 1 ? fitPowerCurves(points, [1, 1]) : free;
  const falling = fit.curves.findIndex(({ height }) => !(height > 0));
  if (falling >= 0) return falling;
  const variances = variancesOf(fit);
  const freeExponent = exponentOf(free);
  return {
    exponent: exponentOf(fit),
    runs: logs.map((log, index) => squeezed(log, fit.curves[index] as PowerCurve, fit.power, variances(index))),
    errors: fit.errors,
    deviation: fit.deviation,
    rSquared: fit.rSquared,
    beyond: freeExponent.value / freeExponent.reach,
    atEnd: free.atEnd && free.power > 1,
  };
}

/** A resistance at 1 bar is read far off the log where the cake took less than this, Pa. */
const FAR = 5e4;

/** What to make of an exponent, and of a resistance at 1 bar. */
export function squeezedRemark({ exponent, runs, beyond, atEnd }: SqueezedRuns): string {
  if (atEnd) return 'No exponent fits within what was looked through: readings, flow or solids are off.';
  if (beyond < -1)
    return 'The log curves downward, which no cake does: flow that fell, beer that cleared, or a candle taken as flat. The exponent was held at 0.';
  if (!(beyond >= 1))
    return 'The exponent is not told from 0: a rigid cake with the resistance of FITRUN serves as well.';
  if (exponent.value > compressibility.limit[1])
    return `Beyond ${compressibility.limit[1]} the exponent serves no plan.`;
  return runs.some(({ reached }) => reached < FAR)
    ? 'The cake took less than 0.5 bar, so its resistance at 1 bar is read far beyond the log.'
    : 'none';
}
