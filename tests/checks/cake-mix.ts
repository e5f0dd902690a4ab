import { type PublishedCheck, printed } from './check.js';

const WELL =
  'D. Tiab and E. C. Donaldson, Petrophysics, 2nd edition, 2004, page 170, table 3.7: geometric mean of 14 permeabilities, 158.7 mD';
/** mD, interval by interval. */
const INTERVALS = [120, 213, 180, 200, 212, 165, 145, 198, 210, 143, 79, 118, 212, 117];
const DARCIES = INTERVALS.map((one) => one / 1000);
const SHARES = INTERVALS.map(() => 1);

export const cakeMixChecks: readonly PublishedCheck[] = [
  {
    calculation: 'MIXPERMEABILITY',
    given: { shares: SHARES, permeabilities: DARCIES },
    expected: 0.1587,
    tolerance: printed(0.1587, 4),
    source: WELL,
    kind: 'published',
  },
  {
    calculation: 'PARTPERMEABILITY',
    given: {
      mix: 0.1587,
      ownShare: 1,
      otherShares: SHARES.slice(1),
      otherPermeabilities: DARCIES.slice(1),
    },
    expected: 0.12,
    tolerance: 14 * printed(0.1587, 4),
    wider: 'half a step of the mean, fourteen times over',
    source: `${WELL}; solved for the first`,
    kind: 'derived',
  },
  {
    calculation: 'MIXPERMEABILITY',
    given: { shares: [89.55, 21, 25], permeabilities: [0.1, 0.02, 1e-4] },
    expected: 0.021_797_723_489_5,
    tolerance: 1e-10,
    source: 'by hand: exp((89.55 ln 0.1 + 21 ln 0.02 + 25 ln 0.0001) / 135.55)',
    kind: 'derived',
  },
  {
    calculation: 'PARTPERMEABILITY',
    given: { mix: 0.021_797_723_489_5, ownShare: 25, otherShares: [89.55, 21], otherPermeabilities: [0.1, 0.02] },
    expected: 1e-4,
    tolerance: 1e-6,
    source: 'by hand: the mix of 89.55, 21 and 25 parts solved for the last',
    kind: 'derived',
  },
];
