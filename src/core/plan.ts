import type { Cell, PlanCells, PlanInput, PlanLabel, PlanTable, PlanValues } from './input.js';
import { isMemorable } from './names.js';
import type { Refused } from './output.js';
import { labelKey, labelRefusal } from './planLabels.js';
import { isRefused, numberRefusal, refused } from './read.js';
import { pairedLength } from './series.js';
import { toSI } from './units.js';
import { isMissing, isUnstated, labelled, quoted } from './wording.js';

const isBlank = (cell: Cell): boolean =>
  cell === null || cell === 0 || (typeof cell === 'string' && cell.trim() === '');

/** What one row's label cell says: nothing, a key, or why it is refused. */
export type LabelRow = { readonly key: string } | Refused | undefined;

/** Reads a column of labels, one row at a call; a label unknown or written twice is refused where it stands. */
function labelReader(table: PlanTable): (cell: Cell, row: number) => LabelRow {
  const rows = new Map<string, number>();
  // The search for the nearest label is long, and a range filled down may ask for it in every row.
  const unknown = new Map<Cell, Refused>();
  const refuse = (cell: Cell): Refused => {
    const known = unknown.get(cell) ?? refused(labelRefusal(table, String(cell)));
    if (isMemorable(cell)) unknown.set(cell, known);
    return known;
  };
  return (cell, row) => {
    if (isBlank(cell)) return undefined;
    const key = typeof cell === 'string' ? labelKey(table, cell) : undefined;
    if (key === undefined) return refuse(cell);
    const before = rows.get(key);
    if (before !== undefined) {
      return refused(`${quoted((table[key] as PlanLabel).label)} stands twice, in rows ${before + 1} and ${row + 1}.`);
    }
    rows.set(key, row);
    return { key };
  };
}

/** What every row of a column of labels says. */
export const readLabels = ({ table }: Pick<PlanInput, 'table'>, labels: readonly Cell[]): readonly LabelRow[] =>
  labels.map(labelReader(table));

/** The row of each label, or the first refusal. */
function rowsOfLabels(input: PlanInput, labels: readonly Cell[]): ReadonlyMap<string, number> | Refused {
  const rows = new Map<string, number>();
  const readLabel = labelReader(input.table);
  for (const [row, cell] of labels.entries()) {
    const read = readLabel(cell, row);
    if (read === undefined) continue;
    if (isRefused(read)) return refused(`${input.label}, row ${row + 1}: ${read.refused}`);
    rows.set(read.key, row);
  }
  return rows;
}

const isUntouched = (cell: Cell): boolean => cell === null || (typeof cell === 'string' && cell.trim() === '');

/** Why a label’s cell is refused, or nothing: where nobody declared what a blank stands for, it is missing and not 0. */
export function valueRefusal(one: PlanLabel, cell: Cell): string | undefined {
  const [least, most] = one.limit;
  const mayBeNothing = least <= 0 && most >= 0 && one.preset === undefined && !one.optional;
  return mayBeNothing && isUntouched(cell) ? isUnstated(one) : numberRefusal(one, cell);
}

/** The value of a label that stands in the plan, in SI; undefined where it is optional and left blank. */
export function readValue(one: PlanLabel, cell: Cell): number | undefined | Refused {
  const refusal = valueRefusal(one, cell);
  if (refusal === undefined) return toSI(Number(cell), one.unit);
  return isBlank(cell) && one.optional ? undefined : refused(refusal);
}

function readAbsent(one: PlanLabel): number | undefined | Refused {
  if (one.preset !== undefined) return toSI(one.preset, one.unit);
  if (one.optional) return undefined;
  return refused(`${quoted(labelled(one.label, one.unit))} is missing. ${isMissing(one)}`);
}

const inRows = (rows: readonly number[]): string => {
  const numbers = rows.map((row) => row + 1).sort((a, b) => a - b);
  if (numbers.length === 0) return '';
  return `, ${numbers.length === 1 ? 'row' : 'rows'} ${numbers.join(', ')}`;
};

/** Reads one column: key → value in SI of the labels in the input's groups. */
function readColumn(
  input: PlanInput,
  rows: ReadonlyMap<string, number>,
  column: readonly Cell[],
  name: string,
): PlanValues | Refused {
  const plan: Record<string, number | undefined> = {};
  for (const [key, one] of Object.entries(input.table)) {
    if (!input.groups.includes(one.group)) continue;
    const row = rows.get(key);
    const value = row === undefined ? readAbsent(one) : readValue(one, column[row] ?? null);
    if (isRefused(value)) return refused(`${name}${inRows(row === undefined ? [] : [row])}: ${value.refused}`);
    plan[key] = value;
  }
  const broken = input.refuse?.(plan);
  if (broken === undefined) return plan;
  const places = broken.keys.map((key) => rows.get(key)).filter((row) => row !== undefined);
  return refused(`${name}${inRows(places)}: ${broken.sentence}`);
}

/**
 * Reads every column of a plan. Labels stand in any order; those of groups that the calculation does not use
 * are recognised, their values unread.
 */
export function readPlan(
  input: PlanInput,
  { labels, columns }: PlanCells,
): Readonly<Record<string, PlanValues>> | PlanCells | Refused {
  if (input.judged) return { labels, columns };
  const rows = rowsOfLabels(input, labels);
  if (isRefused(rows)) return rows;
  const length = pairedLength([labels]);
  const plans: Record<string, PlanValues> = {};
  for (const [key, { label }] of Object.entries(input.columns)) {
    const column = columns[key];
    if (column === undefined) return refused(`${label} must be a range beside ${input.label}, but nothing was given.`);
    if (column.length < length) {
      return refused(
        `${input.label} and ${label} must be equally long, but ${input.label} has ${length} rows and ${label} ${column.length}.`,
      );
    }
    const plan = readColumn(input, rows, column, label);
    if (isRefused(plan)) return plan;
    plans[key] = plan;
  }
  return plans;
}
