import { examplePlan } from '../../src/plan/example.js';
import { PLAN } from '../../src/plan/table.js';
import { CellError, call } from '../functions/answers.js';

export type Changed = NonNullable<Parameters<typeof examplePlan>[0]>;

/** One column of labels and, beside it, one column of values for each plan: what is left out of a plan is blank. */
export function columnsOf(...plans: readonly Changed[]): unknown[][][] {
  const values = plans.map((changed) => examplePlan(changed));
  const labels = Object.values(PLAN)
    .map(({ label }) => label)
    .filter((label) => values.some((plan) => label in plan));
  return [labels.map((label) => [label]), ...values.map((plan) => labels.map((label) => [plan[label] ?? null]))];
}

/** The answer as rows, or the test stops with the sentence. */
export function rowsOf(id: string, ...args: readonly unknown[]): (string | number)[][] {
  const answer = call(id, ...args);
  if (answer instanceof CellError) throw new Error(`${answer.code} ${answer.message}`);
  return answer as (string | number)[][];
}

/** A report by label, or a table by its first column. */
export const byLabel = (rows: readonly (readonly (string | number)[])[]) =>
  new Map(rows.map(([label, ...cells]) => [label, cells.map(Number)] as const));

/** The sentence in place of an answer, with its code in front. */
export function sentenceOf(id: string, ...args: readonly unknown[]): string {
  const answer = call(id, ...args);
  return answer instanceof CellError ? `${answer.code} ${answer.message}` : 'answered';
}

/** The filter aid that also takes up haze protein, in place of the hydrogel. */
export const SWAP: Changed = {
  stabiliserDose: 51,
  stabiliserMoisture: 0.01,
  stabiliserPermeability: 0.08,
  stabiliserPrice: 2.8,
};

/** The cake by one fitted resistance. */
export const byResistance = (cakeResistance: number): Changed => ({
  cakeResistance,
  aidPermeability: undefined,
  beerSolidsPermeability: undefined,
  stabiliserPermeability: undefined,
});
