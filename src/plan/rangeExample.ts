import { examplePlan } from './example.js';

type Changed = NonNullable<Parameters<typeof examplePlan>[0]>;

/** What nobody knows to the last digit, whichever plan it is. */
const SHARED: Readonly<Record<'low' | 'high', Changed>> = {
  low: { beerSolids: 20, beerSolidsPermeability: 8e-5, disposalPrice: 60 },
  high: { beerSolids: 30, beerSolidsPermeability: 1.25e-4, disposalPrice: 90 },
};

const SWAP = { stabiliserMoisture: 0.01, stabiliserPermeability: 0.08 };

/** The invented plan and its swap, each with a low and a high end. */
export const RANGE_EXAMPLE = {
  present: {
    low: examplePlan({ ...SHARED.low, pressureLimit: 4.4 }),
    high: examplePlan({ ...SHARED.high, pressureLimit: 4.6 }),
  },
  proposed: {
    low: examplePlan({ ...SHARED.low, ...SWAP, stabiliserDose: 48, bodyFeed: 55, stabiliserPrice: 2.6 }),
    high: examplePlan({ ...SHARED.high, ...SWAP, stabiliserDose: 54, bodyFeed: 65, stabiliserPrice: 3 }),
  },
} as const;

/** Both plans with both their ends, column by column. */
export const SWAP_EXAMPLE = {
  presentLow: RANGE_EXAMPLE.present.low,
  presentHigh: RANGE_EXAMPLE.present.high,
  proposedLow: RANGE_EXAMPLE.proposed.low,
  proposedHigh: RANGE_EXAMPLE.proposed.high,
};
