// A thousand plans in one go: which body feed and which pressure drop limit are cheapest for beers from clear to murky?
//
//   npm run build library && node docs/thousandPlans.mjs
//
// The figures of the plan are invented. In a project of your own, install the package that `npm pack` makes.

import { calculate, filtrationCost, isNoAnswer, isRefused, runReport } from 'powderbook';

/** One beer on one filter, each figure in the unit of its label; PLAN lists the labels with units, limits and sources. */
const plan = {
  'Filter area': 50,
  'Beer flow': 250,
  'Viscosity at filter': 2.8,
  'Start pressure drop': 0.6,
  'Cake space': 6.5,
  'Precoat load': 800,
  'Filter aid moisture': 0.005,
  'Stabiliser dose': 60,
  'Stabiliser moisture': 0.65,
  'Cake density': 300,
  'Aid permeability': 0.1,
  'Beer solids permeability': 0.0001,
  'Stabiliser permeability': 0.02,
  'Filter aid price': 0.8,
  'Stabiliser price': 2.4,
  'Spent cake dry matter': 0.25,
  'Disposal price': 70,
  'Water per run': 150,
  'Water price': 3.5,
  'Energy per run': 500,
  'Energy price': 0.1,
  'Beer loss per run': 6,
  'Beer value': 30,
  'Labour per run': 3,
  'Labour price': 42,
  Turnaround: 4,
  'Downtime cost': 60,
  'Cleaning cost per run': 60,
  'Year volume': 500_000,
};

const steps = (from, step) => Array.from({ length: 10 }, (_, index) => from + index * step);

/** Run and cost of one plan, or the sentence that says why there is none. */
function outcome(changed) {
  const values = { ...plan, ...changed };
  const run = calculate(runReport, { labels: { values } });
  if (isRefused(run)) return { ...changed, why: run.refused };
  if (isNoAnswer(run)) return { ...changed, why: run.none };
  const cost = calculate(filtrationCost, { labels: { values } });
  if (isRefused(cost)) return { ...changed, why: cost.refused };
  if (isNoAnswer(cost)) return { ...changed, why: cost.none };
  const total = cost.find(({ item }) => item === 'Total');
  return { ...changed, volume: run.volume, end: run.end, perHl: total.perHl };
}

const started = performance.now();
const outcomes = steps(10, 5).flatMap((solids) =>
  steps(40, 15).flatMap((feed) =>
    steps(2.5, 0.5).map((limit) => outcome({ 'Beer solids': solids, 'Body feed': feed, 'Pressure drop limit': limit })),
  ),
);
const milliseconds = performance.now() - started;

const answered = outcomes.filter(({ perHl }) => perHl !== undefined);
console.log('Beer solids g/hL | Body feed g/hL | Pressure drop limit bar | Run hL | Ends by | Cost per hL');
for (const solids of steps(10, 5)) {
  const [best] = answered.filter((one) => one['Beer solids'] === solids).sort((one, other) => one.perHl - other.perHl);
  const cells = [solids, best['Body feed'], best['Pressure drop limit'], best.volume.toFixed(0), best.end];
  console.log([...cells, best.perHl.toFixed(4)].join(' | '));
}
console.log(`${outcomes.length} plans, ${answered.length} with an answer, in ${milliseconds.toFixed(0)} ms`);
