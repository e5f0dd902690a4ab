import { calculation } from '../core/calculation.js';
import { plainNumber } from '../core/wording.js';
import { mean } from '../numerics/sums.js';
import { type Apart, apart, neededEach } from '../numerics/twoGroups.js';
import {
  asLogarithm,
  asShare,
  byPowder,
  type Group,
  MOST_RUNS,
  powdersRefusal,
  SEEING,
  TWO_GROUPS_SOURCE,
} from './repeatedRuns.js';

const percent = (share: number): string => `${plainNumber(Number((100 * share).toPrecision(2)))} %`;

/** A difference and both its ends, as shares. */
interface Told {
  readonly difference: number;
  readonly from: number;
  readonly to: number;
}

const told = ({ difference, reach }: Apart): Told => ({
  difference: asShare(difference),
  from: asShare(difference - reach),
  to: asShare(difference + reach),
});

const between = ({ from, to }: Told): string => `95 %: ${percent(from)} to ${percent(to)}`;

/** The same of what is said to be lower or higher: the nearer end first, without signs. */
function reaching({ from, to }: Told): string {
  const [near, far] = [Math.abs(from), Math.abs(to)].sort((one, other) => one - other) as [number, number];
  return `95 %: ${percent(near)} to ${percent(far)}`;
}

function verdictOf(second: string, found: Told, worth: number, more: number | undefined): string {
  const { difference, from, to } = found;
  const small = from > -worth && to < worth;
  if (from > 0 || to < 0) {
    const side = difference < 0 ? 'lower' : 'higher';
    const matters = small ? `, less than the ${percent(worth)} that are worth seeing` : '';
    return `${second} is ${side} by ${percent(Math.abs(difference))} (${reaching(found)})${matters}.`;
  }
  if (small) return `Alike within ${percent(worth)} (${between(found)}).`;
  const further =
    more === undefined
      ? `more than ${MOST_RUNS} runs of each would be needed`
      : `${more} further ${more === 1 ? 'run' : 'runs'} of each would most likely settle it`;
  return `Not told apart yet: the difference (${between(found)}) may be none; ${further}.`;
}

/** Further runs of each until a difference as large as the one found, or as one worth seeing, would most likely show. */
function furtherRuns({ difference, scatter, reach }: Apart, worth: number, fewest: number): number | undefined {
  if (Math.abs(difference) > reach) return 0;
  const sought = Math.max(Math.abs(difference), asLogarithm(worth));
  const needed = neededEach(sought, scatter, SEEING, MOST_RUNS);
  return needed === undefined ? undefined : Math.max(1, needed - fewest);
}

const NOTHING = {
  from: undefined,
  to: undefined,
  scatter: undefined,
  chance: undefined,
  more: undefined,
} as const;

export const compareRuns = calculation({
  id: 'COMPARERUNS',
  summary: 'Whether repeated runs of two powders differ, by how much, and how many more runs would settle it.',
  question: 'Is the new powder really better, or do runs just differ?',
  inputs: {
    powders: {
      kind: 'names',
      label: 'Powders',
      help: 'Name of the powder of each run, in the order of the runs; the second that appears is compared with the first.',
    },
    figures: {
      kind: 'series',
      least: 2,
      label: 'Figures',
      unit: 'as given',
      limit: [1e-30, 1e30],
      help: 'One figure of each run, such as its rise or cake resistance (FITRUN, FITCAKES), all in one unit.',
      source: 'The limits only keep out slips of the keyboard; the figure is your own.',
    },
    worth: {
      kind: 'number',
      label: 'Difference worth seeing',
      unit: 'fraction',
      limit: [0.001, 1],
      usual: [0.02, 0.2],
      preset: 0.05,
      help: 'What would change the decision: smaller differences count as none.',
      source: 'Usual range: common practice, no source.',
    },
  },
  output: {
    kind: 'report',
    fields: {
      verdict: { label: 'Verdict', text: true },
      difference: { label: 'Difference', unit: 'fraction' },
      from: { label: 'Difference, 95 % from', unit: 'fraction' },
      to: { label: 'Difference, 95 % to', unit: 'fraction' },
      chance: { label: 'Chance that runs of one powder differ as much', unit: 'fraction' },
      scatter: { label: 'Scatter from run to run', unit: 'fraction' },
      more: { label: 'Further runs of each that would settle it', unit: '' },
      first: { label: 'Runs of the first powder', unit: '' },
      second: { label: 'Runs of the second powder', unit: '' },
    },
  },
  method:
    'difference of the means of the logarithms, second less first, as a share of the first; interval and chance by Student’s t with the scatter of both pooled. Further runs: so many that a difference as large, or one worth seeing, would show in 80 % of trials, if runs scatter as these. One run of a powder says nothing of how runs differ, so the verdict waits for two of each. Runs are taken in turn (TRIALPLAN), so that beer that changes from week to week befalls both alike',
  sources: [TWO_GROUPS_SOURCE],
  cautions: ['pressure'],
  example: {
    given: {
      powders: ['Old', 'New', 'New', 'Old', 'Old', 'New'],
      figures: [0.42, 0.35, 0.37, 0.4, 0.43, 0.36],
    },
    result: { more: 0, first: 3, second: 3 },
  },
  refuse: ({ powders }) => powdersRefusal(powders),
  compute: ({ powders, figures, worth }) => {
    const [one, other] = byPowder(powders, figures) as [Group, Group];
    const [first, second] = [one, other].map((group) => group.figures.map(Math.log)) as [number[], number[]];
    const counts = { first: first.length, second: second.length };
    const single = [one, other].find((group) => group.figures.length < 2);
    if (single !== undefined) {
      return {
        ...NOTHING,
        ...counts,
        verdict: `Withheld: there is one run of ${single.name} only, and one run does not tell how runs differ. Make at least two of each.`,
        difference: asShare(mean(second) - mean(first)),
      };
    }
    const found = apart(first, second);
    const more = furtherRuns(found, worth, Math.min(counts.first, counts.second));
    return {
      ...counts,
      ...told(found),
      verdict: verdictOf(other.name, told(found), worth, more),
      chance: found.chance,
      scatter: asShare(found.scatter),
      more,
    };
  },
});
