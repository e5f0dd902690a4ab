import type { Calculation } from '../../../src/core/calculation.js';
import type { Input, PlanInput, PlanLabel } from '../../../src/core/input.js';
import { labelKey } from '../../../src/core/planLabels.js';
import type { Formats } from '../formats.js';

/** What stands in the fields of a form, by field. */
export type Draft = Readonly<Record<string, string>>;

/** The name of a plan's field; every other input has one field, named as its key. */
export const planField = (key: string, column: string, label: string): string => `${key}/${column}/${label}`;

/** The labels that a plan input reads, in the table's order. */
export const planLabels = ({ table, groups }: PlanInput): readonly (readonly [string, PlanLabel])[] =>
  Object.entries(table).filter(([, { group }]) => groups.includes(group));

function planDraft(key: string, input: PlanInput, given: unknown, formats: Formats): [string, string][] {
  const columns = (given ?? {}) as Readonly<Record<string, Readonly<Record<string, number>>>>;
  return Object.keys(input.columns).flatMap((column) => {
    const values = new Map(
      Object.entries(columns[column] ?? {}).map(([label, value]) => [labelKey(input.table, label) ?? label, value]),
    );
    return planLabels(input).map(([name, label]): [string, string] => {
      const value = values.get(name) ?? label.preset;
      return [planField(key, column, name), value === undefined ? '' : formats.field(value, label.unit)];
    });
  });
}

function textOf(input: Exclude<Input, PlanInput>, given: unknown, formats: Formats): string {
  const value = given ?? ('preset' in input ? input.preset : undefined);
  if (value === undefined || value === null) return '';
  const unit = 'unit' in input ? input.unit : '';
  const one = (cell: unknown) => (typeof cell === 'number' ? formats.field(cell, unit) : String(cell));
  return Array.isArray(value) ? value.map(one).join('\n') : one(value);
}

/** The form as it first stands: the example's values, presets written in. */
export function exampleDraft({ inputs, example }: Calculation, formats: Formats): Draft {
  const given = example.given as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    Object.entries(inputs).flatMap(([key, input]): [string, string][] =>
      input.kind === 'plan' ? planDraft(key, input, given[key], formats) : [[key, textOf(input, given[key], formats)]],
    ),
  );
}
