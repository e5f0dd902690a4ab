import type { PlanCells } from '../../src/core/input.js';
import { examplePlan } from '../../src/plan/example.js';

type Changed = Parameters<typeof examplePlan>[0];

/** The invented plan as two columns of a sheet, some of its values changed; undefined leaves a label out. */
export function planCells(changed: Changed = {}): PlanCells {
  const plan = examplePlan(changed);
  return { labels: Object.keys(plan), columns: { values: Object.values(plan) } };
}

/** The same as the matrices that a host hands over. */
export function planMatrices(changed: Changed = {}): [string[][], number[][]] {
  const plan = examplePlan(changed);
  return [Object.keys(plan).map((label) => [label]), Object.values(plan).map((value) => [value])];
}
