import { examplePlan } from './example.js';

/** The invented plan beside one with a filter aid that also adsorbs protein, and the body feed cut for it. */
export const SWAP_EXAMPLE = {
  present: examplePlan(),
  proposed: examplePlan({
    stabiliserDose: 51,
    stabiliserMoisture: 0.01,
    stabiliserPermeability: 0.08,
    stabiliserPrice: 2.8,
    bodyFeed: 60,
  }),
} as const;
