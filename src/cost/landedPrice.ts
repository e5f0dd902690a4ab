import { calculation } from '../core/calculation.js';
import { mass, price } from '../quantities.js';
import { quantity, SLIPS } from '../quantity.js';
import { DUTY_SOURCE, dutyOn, withDuty } from './duty.js';

const share = { unit: 'fraction', preset: 0 } as const;

export const landedPrice = calculation({
  id: 'LANDEDPRICE',
  summary: 'What a kg of powder costs once it lies usable in the store.',
  question: 'What does a usable kg cost with discount, duty, freight and loss?',
  inputs: {
    packPrice: quantity({
      label: 'Pack price',
      unit: 'money',
      limit: [0, 1e9],
      help: 'Price of one bag, big bag or pallet on the list, before discount.',
      source: SLIPS,
    }),
    packMass: { ...mass, label: 'Pack mass', limit: [0.001, 1e7], help: 'Powder in that pack, with its water.' },
    freight: { ...price, label: 'Freight', preset: 0, help: 'For each kg delivered, insurance and handling with it.' },
    discount: quantity({
      ...share,
      label: 'Discount',
      limit: [0, 1],
      usual: [0, 0.4],
      help: 'Share taken off the pack price. Write 5 % or 0.05.',
      source: 'Limits: no more than the whole price. Usual range: common practice, no source.',
    }),
    duty: quantity({
      ...share,
      label: 'Duty',
      limit: [0, 1],
      usual: [0, 0.2],
      help: 'Share of the price of the goods after discount; Duty on says whether of the freight, too.',
      source: 'Limits keep out a percentage written as a whole number. Usual range: common practice, no source.',
    }),
    loss: quantity({
      ...share,
      label: 'Loss',
      limit: [0, 0.9],
      usual: [0, 0.05],
      help: 'Share that never serves: torn bags, damp powder, dust, what stays in the big bag.',
      source: 'Usual range: common practice, no source.',
    }),
    dutyOn,
  },
  output: { kind: 'number', label: 'Landed price', unit: 'money/kg' },
  method:
    '(pack price × (1 − discount) × (1 + duty) / pack mass + freight) / (1 − loss); with duty on goods and freight, (price per kg + freight) × (1 + duty) / (1 − loss)',
  sources: ['Balance of money over one pack: what is lost has been paid for.', DUTY_SOURCE],
  cautions: ['dust'],
  example: {
    given: { packPrice: 1000, packMass: 500, freight: 0.11, discount: 0.1, duty: 0.05, loss: 0.2 },
    result: 2.5,
  },
  compute: ({ packPrice, packMass, discount, loss, ...bought }) =>
    withDuty({ goods: (packPrice * (1 - discount)) / packMass, ...bought }) / (1 - loss),
});
