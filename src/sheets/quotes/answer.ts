import { rankQuotes } from '../../cost/rankQuotes.js';
import { type At, answer, type Line } from '../layout.js';
import { computed } from './lines.js';

const { cost } = rankQuotes.output.fields;

const ABOVE_ALL = 'first of the list of the cheapest below';

/** A column of the ranking at its first offer, below the titles; where nothing is ranked, the error that says why. */
const first = (at: At, column: 'name' | 'cost'): string => {
  const title = `INDEX(${at('ranked.rank')},1)`;
  return `IF(ISERROR(${title}),${title},INDEX(${at(`ranked.${column}`)},2))`;
};

export const answerLines: readonly Line[] = answer([
  computed(
    'cheapestQuote',
    'Cheapest offer at equal effect',
    (at) => `=IFERROR(${first(at, 'name')},"an offer is refused")`,
    '',
    ABOVE_ALL,
  ),
  computed('cheapestCost', cost.label, (at) => `=${first(at, 'cost')}`, cost.unit, ABOVE_ALL),
  computed(
    'cheapestSaves',
    'Less than the powder in use',
    (at) => `=${at('quotePresentCost')}-${at('cheapestCost')}`,
    cost.unit,
    'cost of the powder in use − cost of the cheapest offer; below 0 it costs more',
  ),
]);
