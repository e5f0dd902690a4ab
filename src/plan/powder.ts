import type { Run } from './run.js';

/** Precoat, body feed and stabiliser of one run as bought, kg. */
export const powderPerRun = (run: Run): number =>
  run.plan.precoatLoad * run.plan.area + (run.bodyFeed + run.plan.stabiliserDose) * run.volume;
