import type { Input, Inputs, PlanInput } from '../src/core/input.js';

/** One worksheet parameter. A plan input becomes 1 + n of them: its labels, then each column of values. */
export interface Parameter {
  readonly name: string;
  readonly label: string;
  readonly help: string;
  readonly optional: boolean;
  readonly key: string;
  readonly input: Input;
  /** Of a plan: which column of values, or the labels. */
  readonly column?: string;
}

const isOptional = (input: Input): boolean =>
  ('preset' in input && input.preset !== undefined) || ('optional' in input && input.optional === true);

const planParameters = (key: string, input: PlanInput): Parameter[] => [
  { name: key, label: input.label, help: input.help, optional: false, key, input },
  ...Object.entries(input.columns).map(([column, { label, help }]) => ({
    name: column,
    label,
    help,
    optional: false,
    key,
    input,
    column,
  })),
];

/** The worksheet parameters of a calculation, in their order. */
export function parametersOf(inputs: Inputs): readonly Parameter[] {
  return Object.entries(inputs).flatMap(([key, input]) =>
    input.kind === 'plan'
      ? planParameters(key, input)
      : [{ name: key, label: input.label, help: input.help, optional: isOptional(input), key, input }],
  );
}
