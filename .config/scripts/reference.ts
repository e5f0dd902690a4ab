import { NAMESPACE } from '../../functions/metadata.js';
import { parametersOf } from '../../functions/parameters.js';
import { CAUTIONS } from '../../src/cautions.js';
import type { Calculation, Family } from '../../src/core/calculation.js';
import { evaluateCells, handOver, isNoAnswer } from '../../src/core/evaluate.js';
import type { Input, PlanLabel } from '../../src/core/input.js';
import type { Output } from '../../src/core/output.js';
import type { AnswerCell } from '../../src/core/present.js';
import { isRefused } from '../../src/core/read.js';
import { anyOf, labelled, plainNumber, spanInWords } from '../../src/core/wording.js';
import { table } from './table.js';

function limits(input: Input | PlanLabel): string {
  if ('limit' in input) return spanInWords(input.limit, input.unit);
  if (input.kind === 'choice')
    return [anyOf(input.of), ...Object.keys(input.unfit ?? {}).map((word) => `not ${word}`)].join('; ');
  if (input.kind === 'plan') return 'a column of labels';
  return input.kind === 'names' ? 'a range of texts' : input.kind === 'text' ? 'a text' : 'any cell';
}

function presetOf(input: Input | PlanLabel): string {
  if ('preset' in input && input.preset !== undefined) return String(input.preset);
  return 'optional' in input && input.optional ? 'none' : '';
}

function inputRow(name: string, input: Input | PlanLabel): string[] {
  const bounded = 'limit' in input ? input : undefined;
  return [
    name,
    `${input.label}${'kind' in input && input.kind === 'series' ? ` (a range, at least ${input.least})` : ''}`,
    limits(input),
    bounded?.usual ? spanInWords(bounded.usual, bounded.unit) : '',
    presetOf(input),
    [input.help, bounded?.source ?? ''].filter((text) => text !== '').join(' '),
  ];
}

const INPUT_HEADER = ['input', 'label', 'limits', 'usual', 'preset', 'what it is, and where its range comes from'];

function inputRows({ inputs }: Calculation): string[][] {
  return parametersOf(inputs).map(({ name, input, label, help, column }) =>
    column === undefined ? inputRow(name, input) : [name, label, 'a column of values beside the labels', '', '', help],
  );
}

function outputWords({ output }: Calculation): string {
  if (output.kind === 'number') return labelled(output.label, output.unit);
  if (output.kind === 'text') return `${output.label}, a text`;
  if (output.kind === 'column') return `${output.label}, a text beside each row`;
  const fields = Object.values(output.fields).map((field) =>
    'text' in field ? field.label : labelled(field.label, field.unit),
  );
  const shape = { row: 'one row', report: 'two columns, label and value', table: 'a table with a header row' }[
    output.kind
  ];
  return `${shape}: ${fields.join(', ')}`;
}

const shownCell = (value: AnswerCell): string =>
  typeof value === 'number'
    ? plainNumber(Number(value.toPrecision(12)))
    : isNoAnswer(value)
      ? `#N/A (${value.none})`
      : String(value);

const typed = (value: unknown): string =>
  typeof value === 'string' ? `"${value.replaceAll('"', '""')}"` : String(value);

/** The example as someone would type it; series and plans stand as ranges. */
function exampleFormula({ id, inputs, example }: Calculation): string {
  const given = example.given as Readonly<Record<string, unknown>>;
  const last = Math.max(...Object.keys(inputs).map((key, index) => (key in given ? index : -1)));
  const written = parametersOf(inputs)
    .filter(({ key }) => Object.keys(inputs).indexOf(key) <= last)
    .map(({ key, input, name }) => {
      const value = given[key];
      if (input.kind === 'plan') return name;
      if (Array.isArray(value)) return `{${value.map(typed).join(';')}}`;
      return value === undefined ? '' : typed(value);
    });
  return `=${NAMESPACE}.${id}(${written.join(',')})`;
}

/** What stands above an answer that brings no header of its own. */
function headerOf(output: Output): readonly string[] {
  if (output.kind === 'row') return Object.values(output.fields).map(({ label }) => label);
  return output.kind === 'report' ? ['label', 'value'] : ['label' in output ? output.label : ''];
}

function exampleAnswer(calculation: Calculation): string {
  const answer = evaluateCells(calculation, handOver(calculation.inputs, calculation.example.given as never));
  if (isRefused(answer)) return answer.refused;
  if (isNoAnswer(answer)) return answer.none;
  const [[only] = []] = answer;
  if (answer.length === 1 && answer[0]?.length === 1) return `gives ${shownCell(only as AnswerCell)}`;
  const rows = answer.map((cells) => cells.map(shownCell));
  const { output } = calculation;
  const [header = [], ...rest] = output.kind === 'table' ? rows : [headerOf(output), ...rows];
  return `gives\n\n${table(header, rest)}`;
}

function section(calculation: Calculation): string {
  const { id, question, summary, method, sources, cautions = [] } = calculation;
  return [
    `### ${id}`,
    `*${question}* ${summary}`,
    table(INPUT_HEADER, inputRows(calculation)),
    `**Answer:** ${outputWords(calculation)}.`,
    `**Method:** ${method}.`,
    `**Sources:** ${sources.join(' ')}`,
    `**Example:** \`${exampleFormula(calculation)}\` ${exampleAnswer(calculation)}`,
    ...cautions.map((name) => `**Caution:** ${CAUTIONS[name]}`),
  ].join('\n\n');
}

const planTables = (families: readonly Family[]): string => {
  const inputs = families.flatMap(({ calculations }) => calculations.flatMap((one) => Object.values(one.inputs)));
  const plan = inputs.find((input) => input.kind === 'plan');
  if (plan === undefined) return '';
  const rows = Object.values(plan.table).map((label) => inputRow(label.group, label));
  return `## The plan table\n\nThe labels that every plan function reads.\n\n${table(['group', ...INPUT_HEADER.slice(1)], rows)}\n\n`;
};

const INTRODUCTION = `# Function reference

Made from the declarations by \`npm run docs\`; do not edit by hand.

Every input takes a cell, a range or an array. Ranges combine as the worksheet's own operators do, and the answer
spills. An input outside its limits gives \`#VALUE!\` and a sentence that names it, both limits, the unit and what was
given. Where no answer exists the cell shows \`#N/A\` and says why. An error cell comes out as it went in. A blank cell
counts as 0; where 0 is outside the limits it is refused as "blank or 0". In a plan a blank figure is missing unless its
label has a preset: a price of nothing is typed as 0, and PLANCHECK asks about it. Text is never turned into a number.

`;

/** The whole reference as Markdown. */
export function reference(families: readonly Family[]): string {
  const contents = families.map(
    ({ name, summary, calculations }) =>
      `- **${name}** (${summary}) ${calculations.map(({ id }) => `[${id}](#${id.toLowerCase()})`).join(' · ')}`,
  );
  const sections = families.map(
    ({ name, summary, calculations }) => `## ${name}\n\n${summary}\n\n${calculations.map(section).join('\n\n')}`,
  );
  return `${INTRODUCTION}${contents.join('\n')}\n\n${planTables(families)}${sections.join('\n\n')}\n`;
}
