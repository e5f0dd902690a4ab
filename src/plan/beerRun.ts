import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { beerRefusal, OWN_FIGURES, planOfBeer, sharedPlan } from './beers.js';
import { sharedExample } from './example.js';
import { RUN_GROUPS, type RunPlan } from './input.js';
import { runOf } from './run.js';
import { MIX_SOURCES } from './sources.js';

export const beerRun = calculation({
  id: 'BEERRUN',
  summary: 'Beer until the first limit of a run, for each of several beers on the same filter.',
  question: 'How many hL does a run of each beer give?',
  inputs: { labels: sharedPlan(RUN_GROUPS), ...OWN_FIGURES },
  output: { kind: 'number', label: 'Run', unit: 'hL' },
  method: 'RUNLENGTH of the shared plan with each beer’s own figures',
  sources: MIX_SOURCES,
  cautions: ['pressure', 'dust'],
  example: {
    given: { labels: { values: sharedExample() }, viscosity: 2.8, beerSolids: 25, bodyFeed: 90, stabiliserDose: 60 },
    result: 2104.020656584286,
  },
  refuse: ({ labels, ...own }) => beerRefusal(labels.values, own),
  compute: ({ labels, ...own }) => {
    const run = runOf(planOfBeer<RunPlan>(labels.values, own));
    return isNoAnswer(run) ? run : run.volume;
  },
});
