import type { Unit } from '../src/core/units.js';
import { anyOf, plainNumber, spanInWords } from '../src/core/wording.js';

/** How a language says what the declarations hold in English. Units and limits are derived, never translated texts. */
export interface Words {
  say(english: string): string;
  span(limit: readonly [number, number], unit: Unit): string;
  anyOf(words: readonly string[]): string;
  preset(value: number | string): string;
}

export const english: Words = {
  say: (text) => text,
  span: spanInWords,
  anyOf,
  preset: (value) => `preset ${typeof value === 'number' ? plainNumber(value) : value}`,
};
