import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { figure } from '../core/wording.js';
import { bodyFeed } from '../quantities.js';
import { costOf } from './cost.js';
import { EXAMPLE } from './example.js';
import { type Costed, leastCost, runsOf, type Span, stretch } from './feed.js';
import { feedSpan, leastOf, spanRefusal } from './feedSpan.js';
import { COST_GROUPS, planInput } from './input.js';
import { endsBy } from './run.js';
import { MIX_SOURCES } from './sources.js';

/** Dearer by this share counts as costing the same when the range is told, and as nothing to gain. */
const FLAT = 0.01;
const NOTHING = 0.001;

const ran = { ...bodyFeed, preset: 0 } as const;

/** The feeds that the permeabilities were fitted on. */
const TRIED = {
  triedLeast: {
    ...ran,
    label: 'Least body feed run',
    help: 'Of the runs that the permeabilities were fitted on; 0 (as is a blank cell) where you do not say.',
  },
  triedMost: {
    ...ran,
    label: 'Most body feed run',
    help: 'Of the runs that the permeabilities were fitted on; 0 (as is a blank cell) where you do not say.',
  },
} as const;

/** Whether the answer lies where nobody ran; a span without upper end was not given. */
function beyond(feed: number, triedLeast: number, triedMost: number): readonly string[] {
  if (triedMost === 0 || (feed >= triedLeast && feed <= triedMost)) return [];
  return [
    `Outside the feeds that were run, ${figure(triedLeast, 'g/hL')} to ${figure(triedMost, 'g/hL')}: a guess of the model until a trial is run there.`,
  ];
}

const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`;

function remark({ run, cost }: Costed, { from, to }: Span, today: number, outside: readonly string[]): string {
  const bound =
    run.bodyFeed === from
      ? ['At the least body feed allowed: clarity, not cost, sets the feed.']
      : run.bodyFeed === to
        ? [`Cost still falls at the most body feed allowed, ${figure(to, 'g/hL')}.`]
        : [];
  bound.push(...outside);
  const gain = today - cost;
  if (gain < -NOTHING * cost) return [...bound, 'Today’s feed lies outside the range and costs less.'].join(' ');
  if (gain <= NOTHING * cost) return [...bound, 'Nothing to gain: today’s feed costs as little.'].join(' ');
  return [...bound, `Today’s feed costs ${cost > 0 ? `${percent(gain / cost)} more` : 'more'}.`].join(' ');
}

export const bestFeed = calculation({
  id: 'BESTFEED',
  summary: 'The body feed of least cost per hL.',
  question: 'Which body feed filters at the least cost?',
  inputs: { labels: planInput(COST_GROUPS), ...feedSpan, ...TRIED },
  output: {
    kind: 'report',
    fields: {
      bodyFeed: { label: 'Body feed of least cost', unit: 'g/hL' },
      volume: { label: 'Run', unit: 'hL' },
      end: { label: 'Ends by', text: true },
      cost: { label: 'Least cost', unit: 'money/hL' },
      today: { label: 'Cost today', unit: 'money/hL' },
      from: { label: 'Within 1 % of the least cost from', unit: 'g/hL' },
      to: { label: 'Within 1 % of the least cost to', unit: 'g/hL' },
      remark: { label: 'Remark', text: true },
    },
  },
  method:
    'cost per hL is convex in the body feed, since 1/run is the largest of convex branches: its slope is followed to where it turns, which may be the kink at which pressure and cake space end the run together. It weighs cost alone; clarity may ask for more',
  sources: MIX_SOURCES,
  cautions: ['pressure', 'dust'],
  example: { given: { labels: EXAMPLE }, result: { end: 'pressure and cake space' } },
  refuse: (given) =>
    spanRefusal({ ...given, least: leastOf(given.labels.values, given.least) }) ??
    (given.triedMost < given.triedLeast
      ? `${TRIED.triedMost.label} must not lie below ${TRIED.triedLeast.label}.`
      : undefined),
  compute: ({ labels: { values }, least, most, triedLeast, triedMost }) => {
    const runs = runsOf(values);
    if (isNoAnswer(runs)) return runs;
    const span = { from: leastOf(values, least), to: most };
    const best = leastCost(values, runs, span);
    const cost = (bodyFeed: number) => costOf(values, runs(bodyFeed));
    const today = cost(values.bodyFeed);
    const flat = stretch((feed) => cost(feed) <= best.cost * (1 + FLAT), best.run.bodyFeed, span);
    return {
      bodyFeed: best.run.bodyFeed,
      volume: best.run.volume,
      end: endsBy(best.run),
      cost: best.cost,
      today,
      from: flat.from,
      to: flat.to,
      remark: remark(best, span, today, beyond(best.run.bodyFeed, triedLeast, triedMost)),
    };
  },
});
