import { rankQuotes } from '../../cost/rankQuotes.js';
import { countOf, judgementOf, placesOf, refusedOf } from '../block.js';
import { text } from '../cells.js';
import { type At, answer, type Line } from '../layout.js';
import { examplesLine } from '../opening.js';
import { answered } from './lines.js';
import { offerList } from './offerList.js';

const { cost } = rankQuotes.output.fields;

/** The lowest cost; with no offer there is none, and not 0. */
const least = (at: At): string => {
  const costs = placesOf(offerList, at)('cost');
  return `IF(COUNT(${costs})=0,NA(),MIN(${costs}))`;
};

/** The row of the cheapest offer in a column of the list. */
const cheapest = (at: At, key: string): string => {
  const q = placesOf(offerList, at);
  return `INDEX(${q(key)},MATCH(${least(at)},${q('cost')},0))`;
};

/** How many offers the ranking holds, and the first that it cannot hold. */
const ranked: Line = {
  marks: { rankedOffers: { column: 1 }, 'ranked.judged': { column: 3 } },
  judged: [],
  cells: (at) => [
    text('Offers that are ranked', 'label'),
    {
      formula: `=${countOf(offerList, at)}&" of "&${countOf(offerList, at)}+${refusedOf(offerList, at)}`,
      style: 'result',
    },
    text('', 'unit'),
    { formula: `=${judgementOf(offerList, at)}`, style: 'note' },
    text('', 'note'),
    text('an offer that is refused is named here and beside its row; all others are ranked', 'note'),
  ],
};

export const answerLines: readonly Line[] = answer([
  answered(
    'cheapestQuote',
    'Cheapest offer at equal effect',
    (at) => `=${cheapest(at, 'name')}&""`,
    '',
    'lowest cost of the list below',
  ),
  answered('cheapestCost', cost.label, (at) => `=${least(at)}`, cost.unit, 'of that offer'),
  answered(
    'cheapestSaves',
    'Less than the powder in use',
    (at) => `=${at('quotePresentCost')}-${least(at)}`,
    cost.unit,
    'cost of the powder in use − cost of the cheapest offer; below 0 it costs more',
  ),
  ranked,
  answered(
    'claim',
    'Credit on the delivery',
    (at) => `=${at('deliveryCredit')}`,
    'money',
    'from the part “Moisture credit on a delivery” below',
    2,
  ),
  examplesLine([offerList.name]),
]);
