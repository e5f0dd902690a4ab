import type { PlanLabel, PlanTable } from './input.js';
import { LONGEST_NAME } from './names.js';
import { nearestOf } from './nearest.js';
import { labelled, quoted } from './wording.js';

/** Case, brackets and the ways to type a superscript do not tell labels apart. */
const normal = (text: string): string =>
  text
    .slice(0, LONGEST_NAME)
    .toLowerCase()
    .replace(/[()[\],:]/g, ' ')
    .replace(/\bm([23])\b/g, (_, power) => `m${power === '2' ? '²' : '³'}`)
    .replace(/\bmpa\W?s\b/g, 'mpa·s')
    .trim()
    .replace(/\s+/g, ' ');

/** Both ways in which a sheet may write a label: with its unit and without. */
const labelSpellings = ({ label, unit }: PlanLabel): readonly string[] => [
  normal(label),
  normal(labelled(label, unit)),
];

interface Index {
  /** Normal spelling → key. */
  readonly spellings: ReadonlyMap<string, string>;
  /** What sheets wrote → key: a workbook asks for the same few dozen texts at every calculation. */
  readonly written: Map<string, string>;
}

const MOST_WRITTEN = 1000;

const indexes = new WeakMap<PlanTable, Index>();

function indexOf(table: PlanTable): Index {
  const known = indexes.get(table);
  if (known) return known;
  const entries = Object.entries(table).flatMap(([key, label]) =>
    labelSpellings(label).map((one) => [one, key] as const),
  );
  const index = { spellings: new Map(entries), written: new Map<string, string>() };
  indexes.set(table, index);
  return index;
}

/** The key of the plan's label that a cell names, or undefined. */
export function labelKey(table: PlanTable, text: string): string | undefined {
  const { spellings, written } = indexOf(table);
  const before = written.get(text);
  if (before !== undefined) return before;
  const key = spellings.get(normal(text));
  if (key !== undefined && written.size < MOST_WRITTEN) written.set(text, key);
  return key;
}

/** The label that stands nearest to what was written. */
export function nearestLabel(table: PlanTable, text: string): PlanLabel {
  const { spellings } = indexOf(table);
  const key = spellings.get(nearestOf(spellings.keys(), normal(text)) ?? '');
  return table[key ?? ''] as PlanLabel;
}

/** Why a text is no label of the table: the label with another unit, or no label at all. */
export function labelRefusal(table: PlanTable, text: string): string {
  const nearest = nearestLabel(table, text);
  const proper = labelled(nearest.label, nearest.unit);
  if (!normal(text).startsWith(`${normal(nearest.label)} `)) {
    return `${quoted(text)} is no label of a plan. The nearest is ${quoted(proper)}.`;
  }
  return `${quoted(text)} names another unit. Write ${quoted(proper)}, and its value ${inUnit(nearest)}.`;
}

const inUnit = ({ unit }: PlanLabel): string => {
  if (unit === '') return 'without a unit';
  if (unit === 'fraction') return 'as a fraction or a percentage';
  return `in ${unit}`;
};
