import { fitCake } from '../../src/cake/fitCake.js';
import { fitCakes } from '../../src/cake/fitCakes.js';
import { fitLeaf } from '../../src/cake/fitLeaf.js';
import { fitRun } from '../../src/cake/fitRun.js';
import { riseReport } from '../../src/cake/riseReport.js';
import { calculate } from '../../src/core/calculate.js';
import { type Claim, type Outcome, unlessUnknown, within } from './claim.js';
import { type Chance, NOISES, type Noise } from './noise.js';

type Answer<T> = Exclude<T, { none: string } | { refused: string }>;
const answered = <T extends object>(answer: T): Answer<T> | undefined =>
  'none' in answer || 'refused' in answer ? undefined : (answer as Answer<T>);

const ON = { area: 50, flow: 250, viscosity: 2.8, solids: 135.55 };
const START = 0.6;
const RISE = 0.4;
const HOURS = 8;

/** Resistance of a rigid cake that rises by 0.4 bar/h: rise / (μ u² c), SI. */
const RESISTANCE = (RISE * 1e5) / 3600 / (2.8e-3 * (5 / 36_000) ** 2) / 1.3555;

const hoursOf = (readings: number) => Array.from({ length: readings }, (_, row) => (HOURS * row) / (readings - 1));
const volumesOf = (hours: readonly number[]) => hours.map((hour) => hour * ON.flow);
const noisy = (heights: readonly number[], noise: Noise, chance: Chance): number[] => {
  const off = noise(heights, chance);
  return heights.map((height, row) => height + (off[row] as number));
};

const logOf = (readings: number, noise: Noise, chance: Chance) => {
  const hours = hoursOf(readings);
  const heights = hours.map((hour) => START + RISE * hour);
  return { hours, volumes: volumesOf(hours), bars: noisy(heights, noise, chance) };
};

/** Solves Δp_cake^(1−n) = … for a made compressible log that ends 3.4 bar above its start. */
const N = 0.3;
const squeezedHeights = (hours: readonly number[]) =>
  hours.map((hour) => START + 3.4 * (hour / HOURS) ** (1 / (1 - N)));
const SQUEEZED = (3.4e5 ** (1 - N) * 1e5 ** N) / ((2.8e-3 * (5 / 36_000) * 1.3555 * HOURS * ON.flow) / 10 / ON.area);

function runOnce(readings: number, noise: Noise) {
  return (chance: Chance): Record<string, Outcome> => {
    const { volumes, bars } = logOf(readings, noise, chance);
    const report = answered(calculate(fitRun, { ...ON, volumes, bars }));
    if (!report) return {};
    return {
      ...unlessUnknown(report.errors, {
        'start pressure drop': within(report.start, report.times, START),
        rise: within(report.risePerHour, report.times, RISE),
        'cake resistance': within(report.resistance, report.times, RESISTANCE),
      }),
      '“straight”': report.shape === 'straight',
    };
  };
}

/** One powder, whose runs differ: the rise of one log is not that of the powder. */
function otherRun(share: number) {
  return (chance: Chance): Record<string, Outcome> => {
    const own = RISE * (1 + share * chance.normal());
    const hours = hoursOf(34);
    const heights = hours.map((hour) => START + own * hour);
    const bars = noisy(heights, NOISES.white, chance);
    const report = answered(calculate(fitRun, { ...ON, volumes: volumesOf(hours), bars }));
    const says = report?.errors.includes('this run alone') ? undefined : false;
    return { 'rise of the powder': says };
  };
}

function wildOnce(readings: number, noise: Noise) {
  return (chance: Chance): Record<string, Outcome> => {
    const { hours, bars } = logOf(readings, noise, chance);
    const wild = bars.map((bar, row) => (row % 17 === 8 ? bar + 1 : bar));
    const report = answered(calculate(riseReport, { hours, bars: wild }));
    return report ? unlessUnknown(report.errors, { rise: within(report.rise, report.times, RISE) }) : {};
  };
}

function cakeOnce(noise: Noise) {
  const hours = hoursOf(48);
  return (chance: Chance): Record<string, Outcome> => {
    const bars = noisy(squeezedHeights(hours), noise, chance);
    const report = answered(calculate(fitCake, { ...ON, volumes: volumesOf(hours), bars }));
    if (!report) return {};
    return unlessUnknown(report.errors, {
      'start pressure drop': within(report.start, report.times, START),
      'resistance at 1 bar': within(report.resistance, report.times, SQUEEZED),
      exponent: within(report.exponent, report.times, N),
    });
  };
}

function cakesOnce(noise: Noise) {
  const hours = hoursOf(16);
  const runs = [0, 1, 2, 3];
  return (chance: Chance): Record<string, Outcome> => {
    const rows = answered(
      calculate(fitCakes, {
        runs: runs.flatMap((run) => hours.map(() => run)),
        volumes: runs.flatMap(() => volumesOf(hours)),
        bars: runs.flatMap(() => noisy(squeezedHeights(hours), noise, chance)),
        area: ON.area,
        flow: [ON.flow],
        viscosity: [ON.viscosity],
        solids: [ON.solids],
      }),
    );
    const [row] = rows ?? [];
    if (!row) return {};
    const sure = (value: number | undefined, error: number | undefined, truth: number) =>
      within({ value: value as number, error }, row.times, truth);
    return unlessUnknown(row.errors, {
      'resistance at 1 bar': sure(row.resistance, row.resistanceError, SQUEEZED),
      exponent: sure(row.exponent, row.exponentError, N),
    });
  };
}

/** t/V = 1000 s/m³ + 2e6 s/m⁶ V, noise on each time. */
function leafOnce(readings: number, size: (litres: number) => number) {
  const litres = Array.from({ length: readings }, (_, row) => 0.5 + (3 * row) / (readings - 1));
  return ({ normal }: Chance): Record<string, Outcome> => {
    const seconds = litres.map((one) => (one / 1000) * (1000 + 2e6 * (one / 1000)) + size(one) * normal());
    const report = answered(calculate(fitLeaf, { seconds, litres, area: 0.05, pressure: 1, viscosity: 1, solids: 10 }));
    if (!report) return {};
    return unlessUnknown(report.errors, {
      'cake resistance': within(report.resistance, report.times, 1e11),
      'medium resistance': within(report.medium, report.times, 5e9),
    });
  };
}

const { white, growing, minutes } = NOISES;
const chained = NOISES['autocorrelated, 0.7'];
const LOG_NOISES = { white, 'autocorrelated, 0.7': chained, growing } as const;
const each = (made: string, id: string, once: (noise: Noise) => Claim['once']): Claim[] =>
  Object.entries(LOG_NOISES).map(([noise, of]) => ({ id, made, noise, claimed: 0.95, once: once(of) }));

export const logClaims: readonly Claim[] = [
  ...each('34 readings', 'FITRUN', (noise) => runOnce(34, noise)),
  {
    id: 'FITRUN',
    made: '480 readings',
    noise: 'each minute, wandering and gauge',
    claimed: 0.95,
    once: runOnce(480, minutes),
  },
  ...each('9 readings', 'FITRUN', (noise) => runOnce(9, noise)),
  { id: 'FITRUN', made: '34 readings', noise: 'white, runs that differ by 10 %', claimed: 0.95, once: otherRun(0.1) },
  ...each('34 readings, 2 of them wild', 'RISEREPORT', (noise) => wildOnce(34, noise)),
  ...each('48 readings, n = 0.3', 'FITCAKE', cakeOnce),
  ...each('4 runs of 16 readings, n = 0.3', 'FITCAKES', cakesOnce),
  { id: 'FITLEAF', made: '30 readings', noise: 'alike in t', claimed: 0.95, once: leafOnce(30, () => 0.1) },
  {
    id: 'FITLEAF',
    made: '30 readings',
    noise: 'growing with t',
    claimed: 0.95,
    once: leafOnce(30, (litres) => 0.05 * litres),
  },
  { id: 'FITLEAF', made: '8 readings', noise: 'alike in t', claimed: 0.95, once: leafOnce(8, () => 0.1) },
];
