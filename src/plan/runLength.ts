import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { EXAMPLE } from './example.js';
import { planInput, RUN_GROUPS } from './input.js';
import { runOf } from './run.js';
import { MIX_SOURCES } from './sources.js';

export const runLength = calculation({
  id: 'RUNLENGTH',
  summary: 'Beer until the first limit of a run.',
  question: 'How many hL does a run give?',
  inputs: { labels: planInput(RUN_GROUPS) },
  output: { kind: 'number', label: 'Run', unit: 'hL' },
  method:
    'the least of: beer until the pressure drop limit, Δp_cake^(1−n) = μ u α w (1 bar)^−n solved for the solids laid; beer until the cake space is full, precoat included; and the run limit',
  sources: MIX_SOURCES,
  cautions: ['pressure', 'dust'],
  example: { given: { labels: EXAMPLE }, result: 2104.020656584286 },
  compute: ({ labels: { values } }) => {
    const run = runOf(values);
    return isNoAnswer(run) ? run : run.volume;
  },
});
