import type { Calculation, Family } from '../../src/core/calculation.js';
import type { Input } from '../../src/core/input.js';
import { meantBy, PASSED_OVER } from './everydayWords.js';

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

const labelsOf = (input: Input): readonly string[] =>
  input.kind === 'plan' ? [input.label, ...Object.values(input.table).map(({ label }) => label)] : [input.label];

/** Gives a declaration’s English in the language of the pane; both are searched. */
type Say = (english: string) => string;

interface Words {
  /** Id, question and summary: what a function is for. */
  readonly about: string;
  /** Labels of inputs and answers as well. */
  readonly all: string;
}

function wordsOf({ id, summary, question, inputs, output }: Calculation, say: Say): Words {
  const answers = 'fields' in output ? Object.values(output.fields).map(({ label }) => label) : [output.label];
  const told = [summary, question];
  const about = plain([`POWDER.${id}`, ...told, ...told.map(say)].join('\n'));
  const labels = [...Object.values(inputs).flatMap(labelsOf), ...answers];
  return { about, all: `${about}\n${plain([...labels, ...labels.map(say)].join('\n'))}` };
}

/** Words as a declaration has them: a short one only where a word begins, or `rise` would be found in `comprise`. */
const has = (text: string, word: string): boolean =>
  word.length > 4 ? text.includes(word) : new RegExp(`(^|[^\\p{L}])${word}`, 'u').test(text);

function questionWords(query: string): readonly string[] {
  const words = plain(query)
    .split(/[^\p{L}\p{N}._]+/u)
    .filter(Boolean);
  const telling = words.filter((word) => !PASSED_OVER.has(word));
  return telling.length > 0 ? telling : words;
}

/**
 * The families with those of their calculations that fit the query best: all of its words occur, as they are or as
 * everyday words for something that occurs; where no calculation has all of them, those that have the most.
 */
export function search(families: readonly Family[], query: string, say: Say = (text) => text): readonly Family[] {
  const words = questionWords(query);
  if (words.length === 0) return families;
  const scores = new Map<Calculation, number>();
  for (const one of families.flatMap(({ calculations }) => calculations)) {
    const { about, all } = wordsOf(one, say);
    const plainly = words.every((word) => all.includes(word));
    const meant = words.map(meantBy);
    const inAll = meant.filter((any) => any.some((word) => has(all, word))).length;
    const inAbout = meant.filter((any) => any.some((word) => has(about, word))).length;
    // Half of a question's words at least; what a function is for weighs more than its labels.
    const score = plainly ? words.length * 2 : inAll * 2 >= words.length ? inAll + inAbout : 0;
    if (score > 0) scores.set(one, score);
  }
  const best = Math.max(0, ...scores.values());
  const fits = (one: Calculation) => (scores.get(one) ?? 0) >= Math.max(1, best);
  return families
    .map((family) => ({ ...family, calculations: family.calculations.filter(fits) }))
    .filter(({ calculations }) => calculations.length > 0);
}
