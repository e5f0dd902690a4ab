import type { Calculation, Family } from '../../../src/core/calculation.js';
import type { Input } from '../../../src/core/input.js';
import { meantBy, PASSED_OVER } from './everydayWords.js';
import { tradeWords } from './tradeWords.js';

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

const labelsOf = (input: Input): readonly string[] =>
  input.kind === 'plan' ? [input.label, ...Object.values(input.table).map(({ label }) => label)] : [input.label];

/** Gives a declaration’s English in the language of the pane; both are searched. */
type Say = (english: string) => string;

interface Words {
  readonly id: string;
  /** What a label weighs: a plan has so many that any word is among them. */
  readonly byLabel: number;
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
  const byLabel = Object.values(inputs).some(({ kind }) => kind === 'plan') ? 0.4 : 0.7;
  return { id: plain(id), byLabel, about, all: `${about}\n${plain([...labels, ...labels.map(say)].join('\n'))}` };
}

/** Words as a declaration has them: a short one only where a word begins, or `rise` would be found in `comprise`. */
const has = (text: string, word: string): boolean =>
  word.length > 4 ? text.includes(word) : new RegExp(`(^|[^\\p{L}])${word}`, 'u').test(text);

function questionWords(question: string): readonly string[] {
  const words = question.split(/[^\p{L}\p{N}._]+/u).filter(Boolean);
  const telling = words.filter((word) => !PASSED_OVER.has(word));
  return telling.length > 0 ? telling : words;
}

/** How well one word fits one calculation: its name, then what it is for, then its labels; a saying less than the word. */
function likeness(word: string, meant: readonly string[], { id, about, all, byLabel }: Words): number {
  if (word.length > 2 && id.includes(word)) return 1.2;
  if (has(about, word)) return 1;
  if (meant.some((one) => has(about, one))) return 0.9;
  return meant.some((one) => has(all, one)) ? byLabel : 0;
}

/** Shown beside the best: what fits at least this much of what it does, and no more than so many. */
const NEAR = 0.5;
const MOST = 12;

/**
 * The families with those of their calculations that fit the query, the best first. Each word weighs the more, the
 * fewer calculations it fits; one that fits none is passed over.
 */
export function search(families: readonly Family[], query: string, say: Say = (text) => text): readonly Family[] {
  const { led, rest } = tradeWords(plain(query));
  const words = questionWords(rest);
  if (words.length + led.length === 0) return families;
  const all = families.flatMap(({ calculations }) => calculations).map((one) => [one, wordsOf(one, say)] as const);
  const scores = new Map<Calculation, number>();
  const count = (fits: readonly (readonly [one: Calculation, how: number])[]) => {
    const weight = Math.log(1 + all.length / Math.max(1, fits.length));
    for (const [one, how] of fits) scores.set(one, (scores.get(one) ?? 0) + how * weight);
  };
  for (const word of words) {
    const meant = meantBy(word);
    count(all.map(([one, texts]) => [one, likeness(word, meant, texts)] as const).filter(([, how]) => how > 0));
  }
  // The first of those that a word of the trade leads to is meant before the others.
  for (const ids of led)
    count(all.flatMap(([one]) => (ids.includes(one.id) ? [[one, 1.2 - 0.1 * ids.indexOf(one.id)] as const] : [])));
  const ranked = [...scores].sort(([, one], [, other]) => other - one).map(([one]) => one);
  const least = NEAR * Math.max(0, ...scores.values());
  const shown = ranked.slice(0, MOST).filter((one) => (scores.get(one) ?? 0) >= least);
  return families
    .map((family) => ({ ...family, calculations: shown.filter((one) => family.calculations.includes(one)) }))
    .filter(({ calculations }) => calculations.length > 0)
    .sort(
      (one, other) =>
        shown.indexOf(one.calculations[0] as Calculation) - shown.indexOf(other.calculations[0] as Calculation),
    );
}
