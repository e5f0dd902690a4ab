import type { Calculation } from '../../src/core/calculation.js';
import { evaluateCells, type Handed } from '../../src/core/evaluate.js';
import type { Cell } from '../../src/core/input.js';
import type { AnswerCell } from '../../src/core/present.js';

type Given = Readonly<Record<string, Handed>>;

/** What the library answers when it is called directly, as rows of cells. */
export function answerOf(calculation: Calculation, given: Given): readonly (readonly AnswerCell[])[] {
  const answer = evaluateCells(calculation, given);
  if (!Array.isArray(answer)) throw new Error(`${calculation.id}: ${JSON.stringify(answer)}`);
  return answer;
}

export function figureOf(calculation: Calculation, given: Given): number {
  const cell = answerOf(calculation, given)[0]?.[0];
  if (typeof cell !== 'number') throw new Error(`${calculation.id} answers ${cell}.`);
  return cell;
}

/** A report by its labels. */
export const reportOf = (calculation: Calculation, given: Given): Readonly<Record<string, number>> =>
  Object.fromEntries(answerOf(calculation, given) as [string, number][]);

/** A plan as the library takes it, from columns of labels and values. */
export const planOf = (labels: readonly Cell[], columns: Readonly<Record<string, readonly Cell[]>>) => ({
  labels: { labels, columns },
});
