import { EXAMPLE } from '../../src/plan/example.js';
import type { Bound } from './builtFunctions.js';
import type { Comparison } from './timing.js';

/** The example plan in SI, as plain numbers: flat septum, cake that does not compress. */
const P = {
  area: 50,
  flow: 250 / 36_000,
  viscosity: 2.8e-3,
  start: 0.6e5,
  limit: 4.5e5,
  space: 6.5,
  precoat: 0.8 * 0.995,
  aidDry: 0.995,
  stabiliser: 0.6 * 0.35,
  beer: 0.25,
  density: 300,
  kAid: 0.1,
  kStabiliser: 0.02,
  kBeer: 1e-4,
};
export const DARCY = 1e-7 / 101_325;

/** Solids, resistance and run of one body feed, nothing checked and nothing named. */
function bareRun(feed: number) {
  const aid = feed * P.aidDry;
  const solids = aid + P.stabiliser + P.beer;
  const mean = (aid * Math.log(P.kAid) + P.stabiliser * Math.log(P.kStabiliser) + P.beer * Math.log(P.kBeer)) / solids;
  const slope = (P.viscosity * (P.flow / P.area)) / (Math.exp(mean) * DARCY * P.density);
  const byPressure = (((P.limit - P.start) / slope) * P.area) / solids;
  const bySpace = ((P.space - P.precoat) * P.area) / solids;
  return { solids, slope, volume: Math.min(byPressure, bySpace) };
}

const bareCost = (feed: number, volume: number, solids: number): number =>
  feed * 0.8 +
  0.6 * 2.4 +
  (solids * 0.07) / 0.25 +
  (40 * 0.8 + (39.8 * 0.07) / 0.25 + 525 + 50 + 180 + 126 + 240 + 60) / volume;

function bareCurve(): number[][] {
  const { solids, slope, volume } = bareRun(0.9);
  return Array.from({ length: 25 }, (_, index) => {
    const at = (volume * index) / 24;
    const load = (solids * at) / P.area;
    return [at * 10, at / P.flow / 3600, (P.start + slope * load) / 1e5, P.precoat + load];
  });
}

function bareFeedCurve(): number[][] {
  return Array.from({ length: 25 }, (_, index) => {
    const feed = 0.5 + (2 * index) / 24;
    const { solids, slope, volume } = bareRun(feed);
    return [feed * 100, volume * 10, (slope * solids * P.flow) / P.area, bareCost(feed, volume, solids) / 10];
  });
}

/** A scan to 0.1 g/hL, as one would program it without thinking of convexity. */
function bareScan(): number {
  let least = Number.POSITIVE_INFINITY;
  for (let feed = 0.5; feed <= 2.5; feed += 0.001) {
    const { solids, volume } = bareRun(feed);
    least = Math.min(least, bareCost(feed, volume, solids));
  }
  return least;
}

const cells = (values: readonly (string | number)[]) => values.map((value) => [value]);

export function plans(fn: (id: string) => Bound): Comparison[] {
  const labels = cells(Object.keys(EXAMPLE.values));
  const values = cells(Object.values(EXAMPLE.values));
  const call = (id: string) => () => fn(id)(labels, values, null, null, null, {});
  const cost = fn('FILTRATIONCOST');
  const thousand = () => Array.from({ length: 1000 }, () => cost(labels, values, {}));
  const bareThousand = () =>
    Array.from({ length: 1000 }, () => {
      const { solids, volume } = bareRun(0.9);
      return bareCost(0.9, volume, solids);
    });
  const reference = 'bare loop over the same 25 points, plan not read';
  return [
    { title: 'RUNCURVE, 25 points', reference, bare: bareCurve, work: call('RUNCURVE'), calls: 200 },
    { title: 'FEEDCURVE, 25 points', reference, bare: bareFeedCurve, work: call('FEEDCURVE'), calls: 200 },
    {
      title: 'BESTFEED',
      reference: 'bare scan of the range by 0.1 g/hL',
      bare: bareScan,
      work: call('BESTFEED'),
      calls: 50,
    },
    {
      title: 'FILTRATIONCOST for 1,000 plans',
      reference: 'bare arithmetic of the total, plan not read',
      bare: bareThousand,
      work: thousand,
    },
  ];
}
