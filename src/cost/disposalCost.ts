import { calculation } from '../core/calculation.js';
import { mass } from '../quantities.js';
import { quantity, SLIPS } from '../quantity.js';
import { disposalPrice } from './inputs.js';

/** A whole number of loads that came out a little too large by rounding is no further load. */
const ROUNDED = 1e-9;

/** Whole loads that carry so much; nothing needs none. */
const loadsFor = (wetCake: number, load: number): number =>
  load === 0 ? 0 : Math.ceil((wetCake / load) * (1 - ROUNDED));

export const disposalCost = calculation({
  id: 'DISPOSALCOST',
  summary: 'What it costs to be rid of spent cake, hauls included.',
  question: 'What does the disposal of this spent cake cost?',
  inputs: {
    wetCake: { ...mass, label: 'Spent cake', limit: [0, 1e9], help: 'As it is weighed when it leaves, wet.' },
    price: disposalPrice,
    load: quantity({
      label: 'Load',
      unit: 't',
      limit: [0, 1000],
      usual: [5, 30],
      preset: 0,
      help: 'What one haul carries; 0 (as is a blank cell) where hauls are in the price.',
      source: 'Usual range: common practice, no source.',
    }),
    haul: quantity({
      label: 'Haul',
      unit: 'money',
      limit: [0, 1e7],
      preset: 0,
      help: 'For each load, full or not.',
      source: SLIPS,
    }),
  },
  output: { kind: 'number', label: 'Disposal cost', unit: 'money' },
  method: 'spent cake × price + whole loads × haul; loads = spent cake / load, rounded up, and none for no cake',
  sources: ['Arithmetic of a waste contract: a price per t and a price per haul.'],
  example: { given: { wetCake: 65_000, price: 70, load: 10, haul: 150 }, result: 5600 },
  refuse: ({ load, haul }) =>
    load === 0 && haul > 0 ? 'Load must be given with a Haul: without it the number of hauls is unknown.' : undefined,
  compute: ({ wetCake, price, load, haul }) => wetCake * price + loadsFor(wetCake, load) * haul,
});
