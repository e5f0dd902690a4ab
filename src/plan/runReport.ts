import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { EXAMPLE } from './example.js';
import { planInput, RUN_GROUPS } from './input.js';
import { powderPerRun } from './powder.js';
import { endsBy, loadAfter, meanRiseOver, pressureAfter, riseAfter, runOf, timeFor } from './run.js';
import { MIX_SOURCES } from './sources.js';

/** How long a run is starting, s. */
const START = 3600;

export const runReport = calculation({
  id: 'RUNREPORT',
  summary: 'A run from its start to what ends it.',
  question: 'How long does a run last, and what ends it?',
  inputs: { labels: planInput(RUN_GROUPS) },
  output: {
    kind: 'report',
    fields: {
      volume: { label: 'Run', unit: 'hL' },
      time: { label: 'Run time', unit: 'h' },
      end: { label: 'Ends by', text: true },
      pressure: { label: 'End pressure drop', unit: 'bar' },
      load: { label: 'End load', unit: 'kg/m²' },
      riseAtStart: { label: 'Rise at the start', unit: 'bar/h' },
      riseAtEnd: { label: 'Rise at the end', unit: 'bar/h' },
      powder: { label: 'Powder per run', unit: 'kg' },
      dose: { label: 'Powder in all', unit: 'g/hL' },
    },
  },
  method:
    'the run as in RUNLENGTH; the end load is dry solids with the precoat, powder is precoat, body feed and stabiliser as bought. The rise at the start is the mean over the first hour, or over a shorter run: the power law of a compressible cake says nothing of the very first beer, where it has no resistance at all and a real cake has some',
  sources: MIX_SOURCES,
  cautions: ['pressure', 'dust'],
  example: { given: { labels: EXAMPLE }, result: { end: 'cake space' } },
  compute: ({ labels: { values } }) => {
    const run = runOf(values);
    if (isNoAnswer(run)) return run;
    const powder = powderPerRun(run);
    return {
      volume: run.volume,
      time: timeFor(run, run.volume),
      end: endsBy(run),
      pressure: pressureAfter(run, run.volume),
      load: loadAfter(run, run.volume),
      riseAtStart: meanRiseOver(run, Math.min(run.volume, values.flow * START)),
      riseAtEnd: riseAfter(run, run.volume),
      powder,
      dose: powder / run.volume,
    };
  },
});
