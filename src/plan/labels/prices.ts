import { price } from '../../quantities.js';
import { planLabel } from './planLabel.js';

const group = 'prices';
const OWN = 'The limits only keep out slips of the keyboard; the figure is your own.';

const money = { group, limit: [0, 1e7], source: OWN } as const;
const quantity = { group, limit: [0, 1e6], source: OWN } as const;

/** What a run costs. Prices of powder are per kg as bought. */
export const priceLabels = {
  aidPrice: planLabel({ ...price, group, label: 'Filter aid price', askedAtZero: true }),
  precoatPrice: planLabel({
    ...price,
    group,
    label: 'Precoat price',
    preset: 0,
    help: 'Per kg as bought; 0 or blank is the filter aid price.',
  }),
  stabiliserPrice: planLabel({ ...price, group, label: 'Stabiliser price', askedAtZero: true }),
  dryMatter: planLabel({
    group,
    label: 'Spent cake dry matter',
    unit: 'fraction',
    limit: [0.01, 1],
    usual: [0.1, 0.5],
    help: 'Share of dry solids in the cake as it is discharged and weighed.',
    source:
      'Usual range: dewatered to 45–50 % (MBAA Technical Quarterly 1997, tq97ab10); as discharged 10–20 %, from memory.',
  }),
  disposalPrice: planLabel({
    ...money,
    label: 'Disposal price',
    askedAtZero: true,
    unit: 'money/t',
    help: 'Per t of wet spent cake.',
  }),
  runWater: planLabel({
    ...quantity,
    label: 'Water per run',
    unit: 'hL',
    help: 'For precoating, pushing out, rinsing and cleaning, one run together.',
  }),
  waterPrice: planLabel({
    ...money,
    askedAtZero: true,
    label: 'Water price',
    unit: 'money/m³',
    help: 'Deaerated water with its waste water.',
  }),
  runEnergy: planLabel({
    ...quantity,
    label: 'Energy per run',
    unit: 'kWh',
    help: 'Pumps, cooling of water and heat for cleaning, one run together.',
  }),
  energyPrice: planLabel({
    ...money,
    label: 'Energy price',
    askedAtZero: true,
    unit: 'money/kWh',
    help: 'Mean price of that energy.',
  }),
  runBeerLoss: planLabel({
    ...quantity,
    label: 'Beer loss per run',
    unit: 'hL',
    help: 'Beer that leaves with cake, heads and tails.',
  }),
  beerValue: planLabel({
    ...money,
    label: 'Beer value',
    askedAtZero: true,
    unit: 'money/hL',
    help: 'What a lost hL cost to make.',
  }),
  runLabour: planLabel({
    ...quantity,
    label: 'Labour per run',
    unit: 'h',
    help: 'Work on the cycle only: precoat, discharge, cleaning. Not the hours that someone watches the run.',
  }),
  labourPrice: planLabel({
    ...money,
    askedAtZero: true,
    label: 'Labour price',
    unit: 'money/h',
    help: 'With all that a working hour costs.',
  }),
  turnaround: planLabel({
    ...quantity,
    label: 'Turnaround',
    unit: 'h',
    help: 'From the last beer of a run to the first beer of the next.',
  }),
  downtimeCost: planLabel({
    ...money,
    label: 'Downtime cost',
    unit: 'money/h',
    help: '0 unless the filter is the bottleneck: an hour without beer then costs what it would have earned.',
  }),
  cleaningCost: planLabel({
    ...money,
    label: 'Cleaning cost per run',
    unit: 'money',
    help: 'Agents and whatever else each run costs that stands nowhere else.',
  }),
  otherCost: planLabel({
    ...money,
    label: 'Other cost',
    unit: 'money/hL',
    preset: 0,
    help: 'Whatever else each hL costs, the same in every plan that is compared.',
  }),
} as const;
