import { readPlan } from '../../src/core/plan.js';
import { isRefused } from '../../src/core/read.js';
import { planInput, YEAR_GROUPS, type YearPlan } from '../../src/plan/input.js';
import { planCells } from './sheet.js';

/** The invented plan in SI, as the calculations read it. */
export function runPlan(changed: Parameters<typeof planCells>[0] = {}): YearPlan {
  const read = readPlan(planInput(YEAR_GROUPS), planCells(changed));
  if (isRefused(read)) throw new Error(read.refused);
  return (read as unknown as { values: YearPlan }).values;
}
