import { calculate } from '../../src/core/calculate.js';
import { RANGE_EXAMPLE } from '../../src/plan/rangeExample.js';
import { savingSpread } from '../../src/plan/savingSpread.js';
import type { Claim, Outcome } from './claim.js';
import type { Chance } from './noise.js';

/** Ends between which the saving of the example’s plans may lie to either side of nothing. */
const labels = {
  presentLow: RANGE_EXAMPLE.present.low,
  presentHigh: RANGE_EXAMPLE.present.high,
  proposedLow: { ...RANGE_EXAMPLE.proposed.low, 'Stabiliser price': 2.8 },
  proposedHigh: { ...RANGE_EXAMPLE.proposed.high, 'Stabiliser price': 4 },
};

const FEW = 200;
const spreadOf = (samples: number, seed: number) => {
  const report = calculate(savingSpread, { labels, samples, seed });
  if ('none' in report || 'refused' in report) throw new Error(JSON.stringify(report));
  return report;
};

const TRUE = spreadOf(200_000, 1).chance.value;

/** A chance by few samples, and how far more of them could move it. */
function chanceOnce({ normal }: Chance): Record<string, Outcome> {
  const { value, error = 0 } = spreadOf(FEW, 1 + Math.floor(Math.abs(normal()) * 2 ** 28)).chance;
  return { 'chance of saving': Math.abs(value - TRUE) <= 1.96 * error };
}

export const planClaims: readonly Claim[] = [
  { id: 'SAVINGSPREAD', made: `${FEW} samples`, noise: 'another seed', claimed: 0.95, once: chanceOnce },
];
