import { evaluate } from '../../core/evaluate.js';
import { UNITS, type Unit } from '../../core/units.js';
import { filtrationCost } from '../../plan/filtrationCost.js';
import type { saving } from '../../plan/saving.js';

export interface Item {
  /** As the function answers it, with its unit. */
  readonly shown: string;
  readonly label: string;
  readonly unit: Unit;
}

/** A row’s label as the function answers it; what is no money ends in its unit. */
function itemOf(shown: string): Item {
  const unit = shown.slice(shown.lastIndexOf(' ') + 1);
  return unit !== shown && unit in UNITS
    ? { shown, label: shown.slice(0, shown.lastIndexOf(' ')), unit: unit as Unit }
    : { shown, label: shown, unit: '' };
}

/** The rows of both functions, in the words of their declared examples. */
export const rowsOf = (calculation: typeof filtrationCost | typeof saving): readonly string[] => {
  const answer = evaluate(calculation as typeof filtrationCost, calculation.example.given as never);
  if (!Array.isArray(answer)) throw new Error(`The example of ${calculation.id} has no answer.`);
  return answer.slice(1).map(([label]) => String(label));
};

export const SHOWN = rowsOf(filtrationCost);
export const TOTAL = SHOWN.indexOf('Total');
export const ITEMS: readonly Item[] = SHOWN.map((shown, row) =>
  row <= TOTAL ? { shown, label: shown, unit: 'money' } : itemOf(shown),
);
