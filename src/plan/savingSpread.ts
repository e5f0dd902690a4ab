import { calculation } from '../core/calculation.js';
import { labelKey, labelRefusal } from '../core/planLabels.js';
import { plainNumber } from '../core/wording.js';
import { quantile } from '../numerics/quantile.js';
import { planColumns, YEAR_GROUPS } from './input.js';
import { SWAP_EXAMPLE } from './rangeExample.js';
import { sampleSavings } from './sampleSavings.js';
import { samples, samplingRefusal, seed } from './sampling.js';
import { MIX_SOURCES } from './sources.js';
import { endsOf, SPREAD_COLUMNS, spreadRefusal } from './spreadEnds.js';
import { PLAN } from './table.js';

const YEAR_LABEL: keyof typeof PLAN = 'yearVolume';

/** The keys of labels by name; blank ones are skipped. */
const keysOf = (names: readonly string[]): ReadonlySet<string> =>
  new Set(names.flatMap((name) => labelKey(PLAN, name) ?? []));

/** Why a name is no label, or none that may differ. */
function apartRefusal(names: readonly string[] = []): string | undefined {
  for (const [row, name] of names.entries()) {
    const key = labelKey(PLAN, name);
    if (key === YEAR_LABEL) return `Drawn apart, row ${row + 1}: ${PLAN[YEAR_LABEL].label} is the same in both plans.`;
    if (name !== '' && key === undefined) return `Drawn apart, row ${row + 1}: ${labelRefusal(PLAN, name)}`;
  }
  return undefined;
}

export const savingSpread = calculation({
  id: 'SAVINGSPREAD',
  summary: 'How sure a year’s saving is where figures of both plans are only known between a low and a high end.',
  question: 'How sure is the saving?',
  inputs: {
    labels: planColumns(YEAR_GROUPS, SPREAD_COLUMNS),
    samples,
    seed,
    apart: {
      kind: 'names',
      optional: true,
      label: 'Drawn apart',
      help: 'Labels that are unsure in both plans and not the same thing there, such as the price of two stabilisers: a range of labels. All others share a draw.',
    },
  },
  output: {
    kind: 'report',
    fields: {
      p10: { label: 'Yearly saving, P10', unit: 'money' },
      p50: { label: 'Yearly saving, P50', unit: 'money' },
      p90: { label: 'Yearly saving, P90', unit: 'money' },
      mean: { label: 'Yearly saving, mean', unit: 'money' },
      chance: { label: 'Chance of saving', unit: 'fraction', error: true },
      withoutRun: { label: 'Samples without a run', unit: '' },
    },
  },
  method:
    'both plans are drawn again and again, each label between its ends: triangular, peak in the middle; darcy and m/kg on a log scale. A label that is unsure in both plans shares one draw, which places it alike between the ends of each, unless Drawn apart names it; different labels are independent. P10: 10 % of the savings lie below. Chance of saving = share of the samples in which the proposed plan is cheaper; a tie is not. Its standard error, √(p (1 − p) / samples), tells how far more samples could move it, not whether the ends are right. Samples in which a plan has no run are counted, and left out of all the other figures. Same seed, same answer',
  sources: [
    'Monte Carlo sampling. The triangular distribution is a choice that needs no more than two ends; it is not fitted to anything.',
    'Random numbers: generator xoroshiro128+ of the package pure-rand.',
    ...MIX_SOURCES,
  ],
  cautions: ['dust'],
  example: {
    given: {
      labels: SWAP_EXAMPLE,
    },
    result: { withoutRun: 0 },
  },
  refuse: ({ labels, samples, seed, apart }) =>
    spreadRefusal(labels) ?? samplingRefusal({ samples, seed }) ?? apartRefusal(apart),
  compute: ({ labels, samples, seed, apart = [] }) => {
    const { present, proposed } = endsOf(labels);
    const { savings, saving, withoutRun } = sampleSavings(present, proposed, samples, seed, keysOf(apart));
    const count = savings.length;
    if (count === 0) {
      return {
        none: `None of the ${plainNumber(samples)} samples has a run in both plans: see RUNLENGTH of each at its ends.`,
      };
    }
    const chance = saving / count;
    return {
      p10: quantile(savings, 0.1),
      p50: quantile(savings, 0.5),
      p90: quantile(savings, 0.9),
      mean: savings.reduce((sum, one) => sum + one, 0) / count,
      chance: { value: chance, error: Math.sqrt((chance * (1 - chance)) / count) },
      withoutRun,
    };
  },
});
