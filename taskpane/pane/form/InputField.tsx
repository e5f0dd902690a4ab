import type { FieldProps } from './fieldProps.js';
import { OneCellField } from './OneCellField.js';
import { PlanField } from './PlanField.js';
import { SeriesField } from './SeriesField.js';

/** One input of a calculation, whatever its kind: what it is, what it may be, and a field to fill in. */
export function InputField({ input, ...rest }: FieldProps) {
  if (input.kind === 'plan') return <PlanField input={input} {...rest} />;
  if (input.kind === 'series' || input.kind === 'names') return <SeriesField input={input} {...rest} />;
  return <OneCellField input={input} {...rest} />;
}
