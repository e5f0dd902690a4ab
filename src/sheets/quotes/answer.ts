import { rankQuotes } from '../../cost/rankQuotes.js';
import { columnsOf } from '../columns.js';
import { figureLines } from '../figures.js';
import { gap, heading, type Line } from '../layout.js';

const { computed } = figureLines(columnsOf(['Figure']));

const ABOVE_ALL = 'first of the list of the cheapest below';

/** A column of the ranking at its first offer, below the titles. */
const first = (column: string): string => `INDEX(${column},2)`;

/** What the sheet comes to, before all that leads to it. */
export const answerLines: readonly Line[] = [
  heading('The answer'),
  computed('cheapestQuote', 'Cheapest offer at equal effect', (at) => `=${first(at('ranked.name'))}`, '', ABOVE_ALL),
  computed(
    'cheapestCost',
    rankQuotes.output.fields.cost.label,
    (at) => `=${first(at('ranked.cost'))}`,
    'money/hL',
    ABOVE_ALL,
  ),
  computed(
    'cheapestSaves',
    'Less than the powder in use',
    (at) => `=${at('quotePresentCost')}-${at('cheapestCost')}`,
    'money/hL',
    'cost of the powder in use − cost of the cheapest offer; below 0 it costs more',
  ),
  gap,
];
