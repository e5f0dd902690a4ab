import { fromSI, type Unit } from '../../../src/core/units.js';
import type { Texts } from '../../texts/texts.js';
import type { Formats } from '../formats.js';

/** The words of a picture, and numbers from SI as they stand in its sentences. */
export interface Speech {
  readonly words: Texts['picture'];
  readonly amount: (si: number, unit: Unit) => string;
  readonly count: (value: number) => string;
}

const DIGITS = 4;

/** Money has no currency here, so its unit says only what it is for. */
const PRICE = 'money/';

export const speechFor = (words: Texts['picture'], formats: Formats): Speech => ({
  words,
  amount: (si, unit) => {
    const value = Number(fromSI(si, unit).toPrecision(DIGITS));
    if (!unit.startsWith('money')) return formats.amount(value, unit);
    const number = formats.number(value, unit);
    return unit.startsWith(PRICE) ? words.per(number, unit.slice(PRICE.length)) : number;
  },
  count: formats.count,
});
