import type { Family } from '../core/calculation.js';
import { breakEvenPrice } from './breakEvenPrice.js';
import { costPerHl } from './costPerHl.js';
import { disposalCost } from './disposalCost.js';
import { landedPrice } from './landedPrice.js';
import { powderPerHl } from './powderPerHl.js';
import { rankQuotes } from './rankQuotes.js';
import { runsPerYear } from './runsPerYear.js';
import { spentCake } from './spentCake.js';
import { yearPowder } from './yearPowder.js';

export const costFamily: Family = {
  name: 'Cost',
  summary: 'Quotes, powder and spent cake, per hL and per year.',
  calculations: [
    costPerHl,
    powderPerHl,
    landedPrice,
    rankQuotes,
    spentCake,
    disposalCost,
    yearPowder,
    runsPerYear,
    breakEvenPrice,
  ],
};
