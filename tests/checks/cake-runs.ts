import type { PublishedCheck } from './check.js';

/** Hours of additional sleep with two drugs, ten patients each, taken as two independent groups. */
const FIRST = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
const SECOND = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

/** COMPARERUNS takes logarithms, so the readings are handed over as what they are the logarithms of. */
const given = {
  powders: [...FIRST.map(() => 'first'), ...SECOND.map(() => 'second')],
  figures: [...FIRST, ...SECOND].map(Math.exp),
};

const SOURCE =
  'Student, Biometrika 6 (1908) 1, as in R’s documentation of t.test on its sleep data (equal variances): p = 0.07919, 95 % −3.363874 to 0.203874, taken as logarithms';

const TRIAL =
  'R documentation of power.t.test, examples: 20 in each group show a difference of one standard deviation with a power of 0.8689528';

export const cakeRunChecks: readonly PublishedCheck[] = [
  {
    calculation: 'TRIALPLAN',
    given: { difference: 0.09, scatter: 0.1, seeing: 0.868_952_8 },
    row: '40',
    column: 'Difference that shows by then',
    expected: 0.1,
    tolerance: 2e-2,
    wider: 'two quantiles of t added, where R takes its distribution with the groups apart',
    source: TRIAL,
    kind: 'from memory',
  },
  ...(
    [
      ['Chance that runs of one powder differ as much', 0.079_19, 7e-5],
      ['Difference, 95 % from', Math.expm1(-0.203_874), 3e-6],
      ['Difference, 95 % to', Math.expm1(3.363_874), 1e-6],
    ] as const
  ).map(
    ([row, expected, tolerance]): PublishedCheck => ({
      calculation: 'COMPARERUNS',
      given,
      row,
      expected,
      tolerance,
      source: SOURCE,
      kind: 'from memory',
    }),
  ),
];
