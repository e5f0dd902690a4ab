import { calculation } from '../core/calculation.js';
import { plainNumber } from '../core/wording.js';
import { quantile } from '../numerics/quantile.js';
import { planColumns, YEAR_GROUPS } from './input.js';
import { RANGE_EXAMPLE } from './rangeExample.js';
import { sampleSavings } from './sampleSavings.js';
import { samples, samplingRefusal, seed } from './sampling.js';
import { MIX_SOURCES } from './sources.js';
import { endsOf, SPREAD_COLUMNS, spreadRefusal } from './spreadEnds.js';

export const savingSpread = calculation({
  id: 'SAVINGSPREAD',
  summary: 'How sure a year’s saving is where figures of both plans are only known between a low and a high end.',
  question: 'How sure is the saving?',
  inputs: { labels: planColumns(YEAR_GROUPS, SPREAD_COLUMNS), samples, seed },
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
    'both plans are drawn again and again, each label between its ends: triangular, peak in the middle; darcy and m/kg on a log scale. A label with the same ends in both plans shares one draw, all others are independent. P10: 10 % of the savings lie below. Chance of saving = share of the samples in which the proposed plan is cheaper; a tie is not. Its standard error, √(p (1 − p) / samples), tells how far more samples could move it, not whether the ends are right. Samples in which a plan has no run are counted, and left out of all the other figures. Same seed, same answer',
  sources: [
    'Monte Carlo sampling. The triangular distribution is a choice that needs no more than two ends; it is not fitted to anything.',
    'Random numbers: generator xoroshiro128+ of the package pure-rand.',
    ...MIX_SOURCES,
  ],
  cautions: ['dust'],
  example: {
    given: {
      labels: {
        presentLow: RANGE_EXAMPLE.present.low,
        presentHigh: RANGE_EXAMPLE.present.high,
        proposedLow: RANGE_EXAMPLE.proposed.low,
        proposedHigh: RANGE_EXAMPLE.proposed.high,
      },
    },
    result: { withoutRun: 0 },
  },
  refuse: ({ labels, samples, seed }) => spreadRefusal(labels) ?? samplingRefusal({ samples, seed }),
  compute: ({ labels, samples, seed }) => {
    const { present, proposed } = endsOf(labels);
    const { savings, saving, withoutRun } = sampleSavings(present, proposed, samples, seed);
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
