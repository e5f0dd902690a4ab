import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { catalogue } from '../src/catalogue.js';
import { CAUTIONS } from '../src/cautions.js';
import type { Calculation } from '../src/core/calculation.js';
import { labelled, spanInWords } from '../src/core/wording.js';
import { path } from './paths.js';

/** Where the importable library goes: beside the site and not in it, so that a host serves no file that no page asks for. */
export const library = path('lib');

function inputLine([key, input]: [string, Calculation['inputs'][string]]): string {
  if (!('limit' in input)) return `- \`${key}\`: ${input.label}. ${input.help}`;
  const preset = 'preset' in input && input.preset !== undefined ? `, ${input.preset} where left out` : '';
  return `- \`${key}\`: ${labelled(input.label, input.unit)}, ${spanInWords(input.limit, input.unit)}${preset}. ${input.help}`;
}

function outputLine({ output }: Calculation): string {
  if (!('fields' in output)) return 'unit' in output ? labelled(output.label, output.unit) : output.label;
  const fields = Object.entries(output.fields).map(
    ([key, field]) => `\`${key}\` (${'text' in field ? field.label : labelled(field.label, field.unit)})`,
  );
  return `a ${output.kind} of ${fields.join(', ')}`;
}

/** What an editor shows where a program names a calculation, all of it from the declaration. */
function docstring(calculation: Calculation): string {
  const { id, summary, inputs, method, sources, cautions = [] } = calculation;
  const lines = [
    `${id}: ${summary}`,
    '',
    ...Object.entries(inputs).map(inputLine),
    '',
    `Answers ${outputLine(calculation)}. Method: ${method}.`,
    ...sources.map((source) => `Source: ${source}`),
    ...cautions.map((name) => `Caution: ${CAUTIONS[name]}`),
  ];
  return `/**\n${lines.map((line) => ` * ${line}`.trimEnd().replaceAll('*/', '*\u200b/')).join('\n')}\n */\n`;
}

/** Puts the docstrings into the emitted types: the source's declarations say the same as data. */
function document(): number {
  const marks = new Map(catalogue.map((one) => [one.id as string, one]));
  let documented = 0;
  for (const name of readdirSync(library, { recursive: true }) as string[]) {
    if (!name.endsWith('.d.ts')) continue;
    const source = readFileSync(path('src', name.replace(/\.d\.ts$/, '.ts')), 'utf8');
    const calculation = marks.get(/^export const \w+ = calculation\(\{\s+id: '(\w+)'/m.exec(source)?.[1] ?? '');
    if (calculation === undefined) continue;
    const types = readFileSync(`${library}/${name}`, 'utf8');
    writeFileSync(
      `${library}/${name}`,
      types.replace(/^export declare const \w+: /m, (found) => docstring(calculation) + found),
    );
    documented++;
  }
  return documented;
}

/** Writes the library as modules of its own, with types, for `npm pack`. Throws with the compiler's account. */
export function buildLibrary(): string {
  rmSync(library, { recursive: true, force: true });
  const words = [path('node_modules/typescript/bin/tsc'), '--project', path('.config/tsconfig.emit.json')];
  const { status, stdout } = spawnSync(process.execPath, words, { encoding: 'utf8' });
  if (status !== 0) throw new Error(stdout);
  const modules = (readdirSync(library, { recursive: true }) as string[]).filter((name) => name.endsWith('.js'));
  return `  lib/ ${modules.length} modules, ${document()} calculations with their types`;
}
