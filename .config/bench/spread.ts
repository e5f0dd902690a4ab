import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { RANGE_EXAMPLE } from '../../src/plan/rangeExample.js';
import { type Bound, column } from './builtFunctions.js';
import { DARCY } from './plans.js';
import type { Comparison } from './timing.js';

const K_AID = 0.1 * DARCY;
const PRECOAT = 0.8 * 0.995;
const SPEED = 250 / 36_000 / 50;

/** Cost per m³ of one case of the example, SI: nothing checked, nothing named, all else written in. */
function bareCost(
  feed: number,
  gel: number,
  gelDry: number,
  gelPrice: number,
  kGel: number,
  beer: number,
  kBeer: number,
  tip: number,
  limit: number,
): number {
  const dryGel = gel * gelDry;
  const solids = feed * 0.995 + dryGel + beer;
  const hindrance = dryGel * Math.log(K_AID / kGel) + beer * Math.log(K_AID / kBeer);
  const resistance = Math.exp(hindrance / solids) / (K_AID * 300);
  const byPressure = (((limit - 0.6e5) / (2.8e-3 * SPEED * resistance)) * 50) / solids;
  const run = Math.min(byPressure, ((6.5 - PRECOAT) * 50) / solids);
  const perRun = 32 + (PRECOAT * 50 * tip) / 0.25 + 525 + 50 + 180 + 126 + 240 + 60;
  return feed * 0.8 + gel * gelPrice + (solids * tip) / 0.25 + perRun / run;
}

/** The same draws, costs and quantiles in one loop. */
function bareSpread(samples: number): number[] {
  const generator = xoroshiro128plus(1);
  const draw = () => ((generator.next() & 0xffffff) + (generator.next() & 0xffffff)) * 2 ** -25;
  const [least, width] = [Math.log(8e-5 * DARCY), Math.log(1.25e-4 / 8e-5)];
  const savings = new Float64Array(samples);
  let sum = 0;
  for (let sample = 0; sample < samples; sample++) {
    const [limit, beer, kBeer, tip] = [
      4.4e5 + 0.2e5 * draw(),
      0.2 + 0.1 * draw(),
      Math.exp(least + width * draw()),
      0.06 + 0.03 * draw(),
    ];
    const present = bareCost(0.9, 0.6, 0.35, 2.4, 0.02 * DARCY, beer, kBeer, tip, limit);
    const proposed = bareCost(
      0.55 + 0.1 * draw(),
      0.48 + 0.06 * draw(),
      0.99,
      2.6 + 0.4 * draw(),
      0.08 * DARCY,
      beer,
      kBeer,
      tip,
      4.5e5,
    );
    savings[sample] = (present - proposed) * 50_000;
    sum += savings[sample]!;
  }
  savings.sort();
  return [savings[samples * 0.1]!, savings[samples * 0.5]!, savings[samples * 0.9]!, sum / samples];
}

export function spread(fn: (id: string) => Bound): Comparison[] {
  const labels = Object.keys(RANGE_EXAMPLE.present.low);
  const cells = (plan: Readonly<Record<string, number>>) => column(labels.length, (row) => plan[labels[row]!] ?? null);
  const { present, proposed } = RANGE_EXAMPLE;
  const plans = [cells(present.low), cells(present.high), cells(proposed.low), cells(proposed.high)];
  const names = column(labels.length, (row) => labels[row]);
  return [10_000, 100_000, 1_000_000].map((samples) => ({
    title: `SAVINGSPREAD, ${samples.toLocaleString('en')} samples`,
    reference: 'bare loop of the same draws and costs',
    ...(samples === 10_000 ? { aim: 2 } : {}),
    ...(samples === 1_000_000 ? { rounds: 3 } : {}),
    bare: () => bareSpread(samples),
    work: () => fn('SAVINGSPREAD')(names, ...plans, [[samples]], null, {}),
  }));
}
