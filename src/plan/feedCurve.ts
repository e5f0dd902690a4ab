import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { costOf } from './cost.js';
import { EXAMPLE } from './example.js';
import { runsOf } from './feed.js';
import { feedSpan, spanRefusal } from './feedSpan.js';
import { COST_GROUPS, planInput } from './input.js';
import { points, pointsRefusal, spaced } from './points.js';
import { meanRiseOver } from './run.js';
import { MIX_SOURCES } from './sources.js';

export const feedCurve = calculation({
  id: 'FEEDCURVE',
  summary: 'Run, pressure rise and cost over a span of body feeds.',
  question: 'How do run and cost change with the body feed?',
  inputs: { labels: planInput(COST_GROUPS), ...feedSpan, points },
  output: {
    kind: 'table',
    fields: {
      bodyFeed: { label: 'Body feed', unit: 'g/hL' },
      volume: { label: 'Run', unit: 'hL' },
      rise: { label: 'Mean rise', unit: 'bar/h' },
      cost: { label: 'Cost', unit: 'money/hL' },
    },
  },
  method:
    'run as in RUNLENGTH and cost as in FILTRATIONCOST at evenly spaced body feeds; the rise is the mean over the run',
  sources: MIX_SOURCES,
  cautions: ['pressure', 'dust'],
  example: { given: { labels: EXAMPLE, points: 5 }, result: { rows: 5 } },
  refuse: (given) => spanRefusal(given) ?? pointsRefusal(given),
  compute: ({ labels: { values }, least, most, points }) => {
    const runs = runsOf(values);
    if (isNoAnswer(runs)) return runs;
    return spaced(least, most, points).map((bodyFeed) => {
      const run = runs(bodyFeed);
      return { bodyFeed, volume: run.volume, rise: meanRiseOver(run, run.volume), cost: costOf(values, run) };
    });
  },
});
