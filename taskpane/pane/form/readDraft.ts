import type { Calculation } from '../../../src/core/calculation.js';
import type { Handed } from '../../../src/core/evaluate.js';
import type { Cell, Input, OneCellInput, PlanInput } from '../../../src/core/input.js';
import { choiceRefusal, isRefused, numberRefusal, readCell, readOmitted } from '../../../src/core/read.js';
import { isMissing, type Limited } from '../../../src/core/wording.js';
import { readNumber } from '../../workbook/entry/number.js';
import type { Writing } from '../../workbook/entry/writing.js';
import { type Draft, planField, planLabels } from './draft.js';

/** What a form holds: what it would hand to the calculation, and the sentence at each field that is refused. */
export interface ReadDraft {
  readonly handed: Readonly<Record<string, Handed>>;
  readonly problems: Readonly<Record<string, string>>;
}

type Field = { readonly cell: Cell | undefined; readonly problem?: string };

const lines = (text: string): readonly string[] => text.trimEnd().split('\n');

function numberField(input: Limited, text: string, writing: Writing): Field {
  const entry = readNumber(text, writing);
  if (entry.kind === 'refused') return { cell: text, problem: entry.message };
  const cell = entry.kind === 'number' ? entry.value : text.trim();
  return { cell, problem: numberRefusal(input, cell) };
}

/** A cell taken as it is: a number where it reads as one. */
function plainCell(text: string, writing: Writing): Cell {
  const entry = readNumber(text, writing);
  return entry.kind === 'number' ? entry.value : text.trim();
}

/** One field of an input that takes one cell. Blank means not given: the preset, nothing, or a refusal. */
function oneCell(input: OneCellInput, text: string, writing: Writing): Field {
  if (text.trim() === '') {
    const omitted = readOmitted(input);
    if (isRefused(omitted)) return { cell: undefined, problem: omitted.refused };
    return { cell: 'preset' in input ? input.preset : undefined };
  }
  if (input.kind === 'number') return numberField(input, text, writing);
  if (input.kind === 'choice') return { cell: text, problem: choiceRefusal(input, text) };
  const cell = input.kind === 'cell' ? plainCell(text, writing) : text.trim();
  const read = readCell(input, cell);
  return isRefused(read) ? { cell, problem: read.refused } : { cell };
}

function column(input: Extract<Input, { kind: 'series' | 'names' }>, text: string, writing: Writing) {
  if (text.trim() === '') {
    const needed = input.kind === 'series' && !input.optional;
    return { cells: undefined, problem: needed ? isMissing(input) : undefined };
  }
  if (input.kind === 'names') return { cells: lines(text).map((line) => line.trim() || null), problem: undefined };
  const fields = lines(text).map((line, row) =>
    numberField({ ...input, label: `${input.label}, row ${row + 1},` }, line, writing),
  );
  return { cells: fields.map(({ cell }) => cell ?? null), problem: fields.find(({ problem }) => problem)?.problem };
}

function plan(key: string, input: PlanInput, draft: Draft, writing: Writing, problems: Record<string, string>): Handed {
  const labels = planLabels(input);
  const columns = Object.keys(input.columns).map((name) => {
    const cells = labels.map(([labelName, label]): Cell => {
      const field = planField(key, name, labelName);
      const text = draft[field] ?? '';
      const blank = text.trim() === '';
      if (blank && label.preset !== undefined) return label.preset;
      if (blank && label.optional) return null;
      const { cell, problem } = blank ? { cell: null, problem: isMissing(label) } : numberField(label, text, writing);
      if (problem) problems[field] = problem;
      return cell ?? null;
    });
    return [name, cells] as const;
  });
  return { labels: labels.map(([, { label }]) => label), columns: Object.fromEntries(columns) };
}

/** Reads a form by the same rules as a cell. */
export function readDraft({ inputs }: Pick<Calculation, 'inputs'>, draft: Draft, writing: Writing): ReadDraft {
  const handed: Record<string, Handed> = {};
  const problems: Record<string, string> = {};
  for (const [key, input] of Object.entries(inputs)) {
    const text = draft[key] ?? '';
    if (input.kind === 'plan') {
      handed[key] = plan(key, input, draft, writing, problems);
    } else if (input.kind === 'series' || input.kind === 'names') {
      const { cells, problem } = column(input, text, writing);
      handed[key] = cells;
      if (problem) problems[key] = problem;
    } else {
      const { cell, problem } = oneCell(input, text, writing);
      handed[key] = cell;
      if (problem) problems[key] = problem;
    }
  }
  return { handed, problems };
}
