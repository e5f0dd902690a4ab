import type { Unit } from '../../src/core/units.js';
import { plainNumber } from '../../src/core/wording.js';
import type { Words } from '../words.js';
import { cakeHelps } from './cakeHelps.js';
import { families } from './families.js';
import { labels } from './labels.js';
import { powderHelps } from './powderHelps.js';
import { questions } from './questions.js';
import { summaries } from './summaries.js';
import { trialHelps } from './trialHelps.js';

/** Every translated text by its English; a test holds that it has all texts of the declarations and no other. */
export const TOLD: ReadonlyMap<string, string> = new Map(
  Object.entries({ ...families, ...summaries, ...questions, ...labels, ...powderHelps, ...cakeHelps, ...trialHelps }),
);

const number = (value: number): string => plainNumber(value).replace('.', ',');

function span([least, most]: readonly [number, number], unit: Unit): string {
  const between = `von ${number(least)} bis ${number(most)}`;
  if (unit === 'fraction') return `ein Anteil ${between}`;
  return unit === '' || unit === 'as given' ? between : `${between} ${unit.replace('money', 'Geld')}`;
}

/** The declarations in German. Words that a cell takes, such as kinds of stabiliser, stay as they are typed. */
export const german: Words = {
  say: (text) => TOLD.get(text) ?? text,
  span,
  anyOf: (words) => `${words.slice(0, -1).join(', ')}${words.length > 1 ? ' oder ' : ''}${words.at(-1) ?? ''}`,
  preset: (value) => `Vorgabe ${typeof value === 'number' ? number(value) : value}`,
};
