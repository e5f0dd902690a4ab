import type { Calculation } from '../core/calculation.js';
import type { Input, PlanLabel } from '../core/input.js';
import type { Refused } from '../core/output.js';
import { labelKey } from '../core/planLabels.js';
import { refused } from '../core/read.js';
import { anyOf, quoted } from '../core/wording.js';

export type Catalogue = () => readonly Calculation[];

/** The two text inputs that name an input of a function. */
export const functionAndInput = {
  function: { kind: 'text', label: 'Function', help: 'Its id, with or without POWDER. in front.' },
  input: { kind: 'text', label: 'Input', help: 'The input’s label, or a plan’s label; its case does not matter.' },
} as const;

export type Found = Exclude<Input, { kind: 'plan' }> | (PlanLabel & { readonly kind: 'plan label' });

const normal = (text: string): string => text.trim().toLowerCase();

function inputNamed(inputs: Calculation['inputs'], name: string): Found | undefined {
  for (const [key, input] of Object.entries(inputs)) {
    if (input.kind === 'plan') {
      const label = labelKey(input.table, name);
      if (label !== undefined) return { kind: 'plan label', ...(input.table[label] as PlanLabel) };
    } else if (normal(input.label) === normal(name) || normal(key) === normal(name)) {
      return input;
    }
  }
  return undefined;
}

/** The input that a user names by function and label, or the sentence that says what there is. */
export function findInput(catalogue: Catalogue, functionName: string, inputName: string): Found | Refused {
  const id = functionName
    .trim()
    .toUpperCase()
    .replace(/^POWDER\./, '');
  const calculation = catalogue().find((one) => one.id === id);
  if (!calculation)
    return refused(`Function must be the id of a POWDER function, but ${quoted(functionName)} was given.`);
  const found = inputNamed(calculation.inputs, inputName);
  if (found) return found;
  const labels = anyOf(Object.values(calculation.inputs).map(({ label }) => label));
  return refused(`Input must be one of ${id}: ${labels}; but ${quoted(inputName)} was given.`);
}
