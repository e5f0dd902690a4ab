import { calculation } from '../core/calculation.js';
import { neededEach, visible } from '../numerics/twoGroups.js';
import { asLogarithm, asShare, MOST_RUNS, SEEING, TWO_GROUPS_SOURCE } from './repeatedRuns.js';

/** Pairs turn about, old and new, then new and old, so that what drifts evenly cancels. */
const powderOf = (run: number): 'old' | 'new' => (run % 4 === 0 || run % 4 === 3 ? 'old' : 'new');

export const trialPlan = calculation({
  id: 'TRIALPLAN',
  summary: 'How many runs of an old and a new powder a trial takes, in which order, and what it shows after each pair.',
  question: 'How many runs, and in which order, to see a difference of so many percent?',
  inputs: {
    difference: {
      kind: 'number',
      label: 'Difference to see',
      unit: 'fraction',
      limit: [0.001, 1],
      usual: [0.03, 0.3],
      help: 'Between the rises or resistances of both powders, as a share of the old one’s. Write 10 % or 0.1.',
      source: 'Usual range: common practice, no source.',
    },
    scatter: {
      kind: 'number',
      label: 'Scatter from run to run',
      unit: 'fraction',
      limit: [0.0001, 1],
      usual: [0.03, 0.1],
      help: 'Standard deviation of one powder’s runs as a share of their mean: from your own past runs (COMPARERUNS).',
      source: 'Usual range: from memory, no source.',
    },
    seeing: {
      kind: 'number',
      label: 'Chance to see it',
      unit: 'fraction',
      limit: [0.5, 0.99],
      usual: [0.7, 0.95],
      preset: SEEING,
      help: 'Share of such trials that would show the difference, if it is there.',
      source: 'Preset 80 %: common in planning trials, no source.',
    },
  },
  output: {
    kind: 'table',
    fields: {
      run: { label: 'Run', unit: '' },
      powder: { label: 'Powder', text: true },
      visible: { label: 'Difference that shows by then', unit: 'fraction' },
    },
  },
  method:
    'at least two runs of each, and so many that (t₉₇.₅ + t_seeing) s √(2/n) falls to the difference, n runs of each, s their scatter, both as logarithms, t at 2n − 2 degrees of freedom. Old and new take turns, and the pairs turn about, so that an even drift of beer or filter befalls both alike. The last column says what would show if the trial ended there',
  sources: [TWO_GROUPS_SOURCE],
  cautions: ['pressure', 'dust'],
  example: { given: { difference: 0.1, scatter: 0.05 }, result: { rows: 12 } },
  compute: ({ difference, scatter, seeing }) => {
    const spread = asLogarithm(scatter);
    const each = neededEach(asLogarithm(difference), spread, seeing, MOST_RUNS);
    if (each === undefined)
      return { none: `More than ${MOST_RUNS} runs of each powder would be needed to see so small a difference.` };
    return Array.from({ length: 2 * each }, (_, run) => ({
      run: run + 1,
      powder: powderOf(run),
      visible: run % 2 === 1 && run > 1 ? asShare(visible((run + 1) / 2, spread, seeing)) : undefined,
    }));
  },
});
