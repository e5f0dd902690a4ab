import { rankQuotes } from '../../cost/rankQuotes.js';
import { answer, type Line } from '../layout.js';
import { computed } from './lines.js';

const { cost } = rankQuotes.output.fields;

const ABOVE_ALL = 'first of the list of the cheapest below';

/** A column of the ranking at its first offer, below the titles. */
const first = (column: string): string => `INDEX(${column},2)`;

export const answerLines: readonly Line[] = answer([
  computed('cheapestQuote', 'Cheapest offer at equal effect', (at) => `=${first(at('ranked.name'))}`, '', ABOVE_ALL),
  computed('cheapestCost', cost.label, (at) => `=${first(at('ranked.cost'))}`, cost.unit, ABOVE_ALL),
  computed(
    'cheapestSaves',
    'Less than the powder in use',
    (at) => `=${at('quotePresentCost')}-${at('cheapestCost')}`,
    cost.unit,
    'cost of the powder in use − cost of the cheapest offer; below 0 it costs more',
  ),
]);
