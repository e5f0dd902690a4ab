import { compareRuns } from '../../src/cake/compareRuns.js';
import { fitRun } from '../../src/cake/fitRun.js';
import { calculate } from '../../src/core/calculate.js';
import type { Claim, Outcome } from './claim.js';
import { type Chance, NOISES, type Noise, RUN_TO_RUN } from './noise.js';

const RISE = 0.4;
const TURNS = ['old', 'new', 'new', 'old', 'old', 'new', 'new', 'old'];

/** Repeated runs of two powders that differ by a share; runs of each differ, too. */
function comparedOnce(runs: number, difference: number, share: number, drift = 0) {
  return ({ normal }: Chance): Record<string, Outcome> => {
    const powders = TURNS.slice(0, runs);
    const figures = powders.map((powder, run) => {
      const own = powder === 'new' ? 1 + difference : 1;
      return RISE * own * Math.exp(share * normal() + drift * run);
    });
    const report = calculate(compareRuns, { powders, figures });
    if ('none' in report || 'refused' in report) return {};
    const { from, to, verdict } = report;
    if (from === undefined || to === undefined) return { interval: undefined, verdict: undefined };
    const wrong = difference === 0 ? / is (?:lower|higher) by /.test(verdict) : verdict.includes(' is higher by ');
    return { interval: from <= difference && difference <= to, verdict: !wrong };
  };
}

/** Two logs of one and the same rise: what the readings leave open, as the Trial log reckons it. */
function twoLogsOnce(noise: Noise) {
  const hours = Array.from({ length: 34 }, (_, row) => row / 4);
  const heights = hours.map((hour) => 0.6 + RISE * hour);
  const fitOf = (chance: Chance) => {
    const off = noise(heights, chance);
    const bars = heights.map((height, row) => height + (off[row] as number));
    const volumes = hours.map((hour) => 250 * hour);
    const report = calculate(fitRun, { volumes, bars, area: 50, flow: 250, viscosity: 2.8, solids: 135.55 });
    if ('none' in report || 'refused' in report) throw new Error(JSON.stringify(report));
    return { rise: report.risePerHour.value, reach: (report.times as number) * (report.risePerHour.error as number) };
  };
  return (chance: Chance): Record<string, Outcome> => {
    const [one, other] = [fitOf(chance), fitOf(chance)];
    return { 'verdict on two logs': Math.abs(one.rise - other.rise) < Math.hypot(one.reach, other.reach) };
  };
}

const claim = (id: string, made: string, noise: string, once: Claim['once']): Claim => ({
  id,
  made,
  noise,
  claimed: 0.95,
  once,
});
const percent = (share: number): string => `${100 * share} %`;

export const powderClaims: readonly Claim[] = [
  claim('COMPARERUNS', 'one run of each', 'runs that differ by 10 %', comparedOnce(2, 0, 0.1)),
  ...[4, 8].flatMap((runs) =>
    RUN_TO_RUN.flatMap((share) =>
      [0, -0.1].map((difference) =>
        claim(
          'COMPARERUNS',
          `${runs / 2} runs of each, ${difference === 0 ? 'one powder' : 'new lower by 10 %'}`,
          `runs that differ by ${percent(share)}`,
          comparedOnce(runs, difference, share),
        ),
      ),
    ),
  ),
  claim(
    'COMPARERUNS',
    '4 runs of each in turn, one powder',
    'runs by 5 %, and beer that rises by 2 % a run',
    comparedOnce(8, 0, 0.05, 0.02),
  ),
  ...Object.entries({
    white: NOISES.white,
    'autocorrelated, 0.7': NOISES['autocorrelated, 0.7'],
    growing: NOISES.growing,
  }).map(([noise, of]) => claim('Trial log', 'two logs of 34 readings, one rise', noise, twoLogsOnce(of))),
];
