import type { Calculation, Family } from '../../src/core/calculation.js';
import type { Input } from '../../src/core/input.js';

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

const labelsOf = (input: Input): readonly string[] =>
  input.kind === 'plan' ? [input.label, ...Object.values(input.table).map(({ label }) => label)] : [input.label];

/** Everything that a search looks at, once for each calculation. */
function wordsOf({ id, summary, question, inputs, output }: Calculation): string {
  const answers = 'fields' in output ? Object.values(output.fields).map(({ label }) => label) : [output.label];
  return plain([`POWDER.${id}`, summary, question, ...Object.values(inputs).flatMap(labelsOf), ...answers].join('\n'));
}

/** The families with those of their calculations in which every word of the query occurs. */
export function search(families: readonly Family[], query: string): readonly Family[] {
  const words = plain(query).split(/\s+/).filter(Boolean);
  const matches = (one: Calculation): boolean => {
    const text = wordsOf(one);
    return words.every((word) => text.includes(word));
  };
  return families
    .map((family) => ({ ...family, calculations: family.calculations.filter(matches) }))
    .filter(({ calculations }) => calculations.length > 0);
}
