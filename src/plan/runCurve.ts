import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { EXAMPLE } from './example.js';
import { planInput, RUN_GROUPS } from './input.js';
import { points, pointsRefusal, spaced } from './points.js';
import { loadAfter, pressureAfter, runOf, timeFor } from './run.js';
import { MIX_SOURCES } from './sources.js';

export const runCurve = calculation({
  id: 'RUNCURVE',
  summary: 'Pressure drop and cake load over a run.',
  question: 'How does the pressure rise through the run?',
  inputs: { labels: planInput(RUN_GROUPS), points },
  output: {
    kind: 'table',
    fields: {
      volume: { label: 'Run', unit: 'hL' },
      time: { label: 'Run time', unit: 'h' },
      pressure: { label: 'Pressure drop', unit: 'bar' },
      load: { label: 'Cake load', unit: 'kg/m²' },
    },
  },
  method: 'the run as in RUNLENGTH at evenly spaced volumes; the load is dry solids, precoat included',
  sources: MIX_SOURCES,
  cautions: ['pressure', 'dust'],
  example: { given: { labels: EXAMPLE, points: 5 }, result: { rows: 5 } },
  refuse: pointsRefusal,
  compute: ({ labels: { values }, points }) => {
    const run = runOf(values);
    if (isNoAnswer(run)) return run;
    return spaced(0, run.volume, points).map((volume) => ({
      volume,
      time: timeFor(run, volume),
      pressure: pressureAfter(run, volume),
      load: loadAfter(run, volume),
    }));
  },
});
