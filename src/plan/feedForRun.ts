import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { toSI } from '../core/units.js';
import { figure } from '../core/wording.js';
import { bodyFeed, volume } from '../quantities.js';
import { EXAMPLE } from './example.js';
import { longestRun, runsOf, stretch } from './feed.js';
import { feedRefusal, leastOf } from './feedSpan.js';
import { planInput, RUN_GROUPS } from './input.js';
import { MIX_SOURCES } from './sources.js';

/** A run that was read off another answer comes back rounded. */
const ROUNDED = 1e-9;

const [LEAST, MOST] = bodyFeed.limit.map((one) => toSI(one, bodyFeed.unit)) as [number, number];

export const feedForRun = calculation({
  id: 'FEEDFORRUN',
  summary: 'Least and most body feed that reach a run of so many hL.',
  question: 'Which body feed makes a run this long?',
  inputs: { labels: planInput(RUN_GROUPS), run: { ...volume, label: 'Run', help: 'Beer that one run should give.' } },
  output: {
    kind: 'report',
    fields: {
      least: { label: 'Least body feed', unit: 'g/hL' },
      most: { label: 'Most body feed', unit: 'g/hL' },
    },
  },
  method:
    'the run as in RUNLENGTH, longest at one body feed and shorter on both sides of it: less blinds the cake, more only fills its space. The two feeds at which it just gives this run, none below the plan’s Least body feed for clarity',
  sources: MIX_SOURCES,
  cautions: ['pressure', 'dust'],
  example: { given: { labels: EXAMPLE, run: 2000 }, result: { most: 97.085427135678 } },
  refuse: feedRefusal,
  compute: ({ labels: { values }, run: wanted }) => {
    const runs = runsOf(values);
    if (isNoAnswer(runs)) return runs;
    const span = { from: leastOf(values, LEAST), to: MOST };
    const longest = longestRun(runs, span);
    if (longest.volume < wanted * (1 - ROUNDED)) {
      return {
        none: `No body feed reaches ${figure(wanted, 'hL')}: the longest run, ${figure(longest.volume, 'hL')}, comes at ${figure(longest.bodyFeed, 'g/hL')}.`,
      };
    }
    const enough = Math.min(wanted, longest.volume);
    const reached = stretch((feed) => runs(feed).volume >= enough, longest.bodyFeed, span);
    return { least: reached.from, most: reached.to };
  },
});
