import { evaluate as arithmetic } from 'mathjs';
import { catalogue } from '../../src/catalogue.js';
import { type Answer, evaluateCells, handOver, isNoAnswer } from '../../src/core/evaluate.js';
import { labelKey } from '../../src/core/planLabels.js';
import { isRefused } from '../../src/core/read.js';
import { PLAN } from '../../src/plan/table.js';

export type Plan = Readonly<Record<string, number>>;
export type Plans = ReadonlyMap<string, Plan>;

/** Splits at a mark that stands in no brackets and no quotes. */
function split(text: string, mark: string): string[] {
  const parts = [''];
  let depth = 0;
  let quoted = false;
  for (const letter of text) {
    if (letter === '"') quoted = !quoted;
    if ('({'.includes(letter)) depth++;
    if (')}'.includes(letter)) depth--;
    if (letter === mark && depth === 0 && !quoted) parts.push('');
    else parts[parts.length - 1] += letter;
  }
  return parts.map((part) => part.trim());
}

/** A label as the plan's table has it, without its unit. */
export function properLabel(text: string): string {
  const key = labelKey(PLAN, text);
  if (key === undefined) throw new Error(`${text} is no label of a plan.`);
  return PLAN[key as keyof typeof PLAN].label;
}

/** "plan with Body feed 60 and Compressibility 0.2": a plan that stands already, some labels of it changed or taken out. */
export function planOf(text: string, plans: Plans): Plan {
  const [name = '', changes = ''] = text.split(' with ');
  const plan = plans.get(name);
  if (plan === undefined) throw new Error(`No plan is called ${name}.`);
  const entries = new Map(Object.entries(plan));
  for (const change of changes === '' ? [] : changes.split(' and ')) {
    const [, label = '', value] = /^(.*) (\S+)$/.exec(change) ?? [];
    if (value === 'none') entries.delete(properLabel(label));
    else entries.set(properLabel(label), Number(value));
  }
  return Object.fromEntries(entries);
}

function given(text: string): unknown {
  if (text.startsWith('{')) return text.slice(1, -1).split(';').map(Number);
  if (text.startsWith('"')) return text.slice(1, -1);
  return text.endsWith('%') ? Number(text.slice(0, -1)) / 100 : Number(text);
}

/** Arguments in the order of the inputs; a plan takes as many as it has columns. */
function call(id: string, words: string[], plans: Plans): ReturnType<typeof evaluateCells> {
  const calculation = catalogue.find((one) => one.id === id);
  if (calculation === undefined) throw new Error(`There is no ${id}.`);
  const handed: Record<string, unknown> = {};
  for (const [key, input] of Object.entries(calculation.inputs)) {
    if (words.length === 0) break;
    handed[key] =
      input.kind === 'plan'
        ? Object.fromEntries(Object.keys(input.columns).map((column) => [column, planOf(words.shift()!, plans)]))
        : given(words.shift()!);
  }
  if (words.length > 0) throw new Error(`${id} takes fewer arguments: ${words.join(', ')} is left.`);
  return evaluateCells(calculation, handOver(calculation.inputs, handed));
}

/** The cell beside a row's label: the second, or that under a heading. */
function cellOf(answer: Answer, [row, heading]: string[]): unknown {
  if (row === undefined) return answer[0]?.[0];
  const column = heading === undefined ? 1 : answer[0]!.findIndex((cell) => String(cell).startsWith(heading));
  return answer.find(([label]) => label === row)?.[column];
}

/** What the left side of a worked line comes to: `POWDER.RUNREPORT(plan), Ends by`, or plain arithmetic. */
export function worked(left: string, plans: Plans): unknown {
  if (!left.startsWith('POWDER.')) return arithmetic(left);
  const [called = '', ...place] = split(left, ',');
  const [, id = '', words = ''] = /^POWDER\.(\w+)\((.*)\)$/.exec(called) ?? [];
  const answer = call(id, split(words, ','), plans);
  if (isRefused(answer)) return `refused: ${answer.refused}`;
  return isNoAnswer(answer) ? `none: ${answer.none}` : cellOf(answer, place);
}
