import type { Cell } from './input.js';
import type { Estimate, Field, NoAnswer, Output } from './output.js';
import { fromSI, type Unit } from './units.js';
import { labelled } from './wording.js';

/** What an answer's cell can hold: never null, NaN or an infinity. */
export type AnswerCell = Exclude<Cell, null> | NoAnswer;

const noFreedom: NoAnswer = { none: 'Two points leave no freedom to tell a standard error.' };

export const tooLarge = (label: string): NoAnswer => ({
  none: `${label} lies beyond the numbers that a worksheet can hold at these inputs.`,
});

/** A number from SI into the answer's unit, or why it cannot be shown. */
export function presentNumber(value: number, unit: Unit, label: string): number | NoAnswer {
  const shown = fromSI(value, unit) + 0;
  return Number.isFinite(shown) ? shown : tooLarge(label);
}

function presentField(field: Field, value: unknown): AnswerCell {
  if ('text' in field) return value as string;
  if (value === undefined) return '';
  return presentFigure(field, value as number);
}

/** A figure of a row in its unit, or why it cannot be shown. */
export const presentFigure = ({ label, unit }: { readonly label: string; readonly unit: Unit }, value: number) =>
  inFifteenDigits(presentNumber(value, unit, label));

/** There and back through SI may cost the sixteenth digit: a dose of 1003 must not come back as 1002.9999999999999. */
const inFifteenDigits = (shown: number | NoAnswer): number | NoAnswer =>
  typeof shown === 'number' ? Number(shown.toPrecision(15)) : shown;

const reportRows = (field: Field, value: unknown): AnswerCell[][] => {
  if ('text' in field || !field.error) {
    const label = 'text' in field ? field.label : labelled(field.label, field.unit);
    return [[label, presentField(field, value)]];
  }
  const { value: estimate, error } = value as Estimate;
  const errorLabel = `${field.label}, standard error`;
  return [
    [labelled(field.label, field.unit), presentField(field, estimate)],
    [
      labelled(errorLabel, field.unit),
      error === undefined ? noFreedom : presentField({ ...field, label: errorLabel }, error),
    ],
  ];
};

/** A result of `compute`, in SI, as the cells that the worksheet shows. */
export function present(output: Output, result: unknown): readonly (readonly AnswerCell[])[] {
  if (output.kind === 'number') return [[presentNumber(result as number, output.unit, output.label)]];
  if (output.kind === 'text') return [[result as string]];
  if (output.kind === 'column') return (result as readonly string[]).map((text) => [text]);
  const fields = Object.entries(output.fields);
  if (output.kind === 'table') {
    const header = fields.map(([, field]) => ('text' in field ? field.label : labelled(field.label, field.unit)));
    const rows = result as readonly Readonly<Record<string, unknown>>[];
    return [header, ...rows.map((row) => fields.map(([key, field]) => presentField(field, row[key])))];
  }
  const row = result as Readonly<Record<string, unknown>>;
  if (output.kind === 'row') return [fields.map(([key, field]) => presentField(field, row[key]))];
  return fields.flatMap(([key, field]) => reportRows(field, row[key]));
}
