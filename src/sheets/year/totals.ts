import type { Unit } from '../../core/units.js';
import { powderPerHl } from '../../cost/powderPerHl.js';
import { yearPowder } from '../../cost/yearPowder.js';
import { precoatMass } from '../../feed/precoatMass.js';
import { beerCost } from '../../plan/beerCost.js';
import { COST_ITEMS } from '../../plan/cost.js';
import { filtrationCost } from '../../plan/filtrationCost.js';
import { countOf, judgementOf, refusedOf } from '../block.js';
import { resultCell, shownUnit, text } from '../cells.js';
import { call } from '../formula.js';
import { type At, gap, heading, type Line, note, titles, UNIT } from '../layout.js';
import { beerList, ofBeers, ownColumn } from './beerList.js';
import { columns, SIDES } from './lines.js';

const TOTAL = 'Total';
const MONEY = [...COST_ITEMS.map(({ label }) => label), TOTAL];

const q = (at: At, key: string): string => at(`beers.${key}`);

/** A sum over the beers that count. An error of one of them is an error of the sum. */
const sumOf = (at: At, formula: string): string => `=SUM(IF(${q(at, 'counted')}=1,${formula},0))`;

const costOf = (at: At, side: number, item: string): string =>
  sumOf(at, `${call(beerCost.id, [...ofBeers(at, side), `"${item}"`])}*${q(at, 'yearVolume')}`);

const own = (at: At, key: Parameters<typeof ownColumn>[0], side: number) => q(at, ownColumn(key, side) ?? '');
const shared = (at: At, key: string, side: number) => at(`shared.${key}.${side}`);
const runs = (at: At, side: number) => `${q(at, 'yearVolume')}/${q(at, `run.${side}`)}`;

/** Filter aid for each hL, its share of the precoat included. */
const aid = (at: At, side: number): string =>
  call(powderPerHl.id, [
    call(precoatMass.id, [shared(at, 'area', side), shared(at, 'precoatLoad', side)]),
    own(at, 'bodyFeed', side),
    q(at, `run.${side}`),
  ]);

/** Dry solids of each hL, g. */
const solids = (at: At, side: number): string =>
  [
    `${aid(at, side)}*(1-${shared(at, 'aidMoisture', side)})`,
    `${own(at, 'stabiliserDose', side)}*(1-${shared(at, 'stabiliserMoisture', side)})*(1-${shared(at, 'stabiliserRemoved', side)})`,
    own(at, 'beerSolids', side),
  ].join('+');

interface Quantity {
  readonly label: string;
  readonly unit: Unit;
  formula(at: At, side: number): string;
}

/** What a year takes, as FILTRATIONCOST has it for one beer. */
const QUANTITIES: readonly Quantity[] = [
  { label: 'Runs', unit: '', formula: runs },
  {
    label: 'Powder as bought',
    unit: 't',
    formula: (at, side) =>
      call(yearPowder.id, [q(at, 'yearVolume'), `${aid(at, side)}+${own(at, 'stabiliserDose', side)}`]),
  },
  {
    label: 'Spent cake',
    unit: 't',
    formula: (at, side) => `(${solids(at, side)})*${q(at, 'yearVolume')}/1000000/${shared(at, 'dryMatter', side)}`,
  },
  { label: 'Water', unit: 'm³', formula: (at, side) => `${runs(at, side)}*${shared(at, 'runWater', side)}/10` },
  { label: 'Beer lost', unit: 'hL', formula: (at, side) => `${runs(at, side)}*${shared(at, 'runBeerLoss', side)}` },
  { label: 'Filtering', unit: 'h', formula: (at, side) => `${q(at, 'yearVolume')}/${shared(at, 'flow', side)}` },
  { label: 'Turnaround', unit: 'h', formula: (at, side) => `${runs(at, side)}*${shared(at, 'turnaround', side)}` },
];

const digitsOf = (unit: Unit): number => (unit === 'money' ? 0 : 1);

/** Water is money and a quantity. */
const placed = (label: string, unit: Unit): string => (unit === 'money' ? `total.${label}` : `quantity.${label}`);

const line = (label: string, unit: Unit, formula: (at: At, side: number) => string): Line => ({
  marks: Object.fromEntries([
    ...SIDES.map((said, side) => [`${placed(label, unit)}.${said}`, { column: side + 1 }]),
    [`${placed(label, unit)}.saved`, { column: columns.judgement }],
  ]),
  cells: (at) => [
    text(label, 'label'),
    ...SIDES.map((_, side) => resultCell(formula(at, side), unit, digitsOf(unit))),
    text(shownUnit(unit), 'unit'),
    resultCell(`=${at(`${placed(label, unit)}.now`)}-${at(`${placed(label, unit)}.proposed`)}`, unit, digitsOf(unit)),
  ],
});

/** How many beers the sums hold, and the first that they cannot hold. */
export const beersLine: Line = {
  marks: { beersInSums: { column: 1 }, 'beers.judged': { column: columns.judgement } },
  cells: (at) => [
    text('Beers that the sums hold', 'label'),
    {
      formula: `=${countOf(beerList, at)}&" of "&${countOf(beerList, at)}+${refusedOf(beerList, at)}`,
      style: 'result',
    },
    text('', 'note'),
    text('', 'unit'),
    { formula: `=${judgementOf(beerList, at)}`, style: 'note' },
    text('', 'note'),
    text('', 'note'),
    text('a beer that is refused is named here and beside its row', 'note'),
  ],
};

const itemsLeft = (at: At, said: string): string => {
  const items = `${at(`total.${MONEY[0]}.${said}`)}:${at(`total.${MONEY[MONEY.length - 2]}.${said}`)}`;
  return `ABS(SUM(${items})-${at(`total.${TOTAL}.${said}`)})`;
};

/** Below this it is rounding. */
const CENT = 0.01;

const proof: Line = {
  marks: { closes: { column: 1 } },
  cells: (at) => [
    text('Does the year close?', 'label'),
    {
      formula: `=IF(${refusedOf(beerList, at)}>0,"not all beers are in the sums",IF(ISERROR(${at(`total.${TOTAL}.saved`)}),"does not close",IF(${SIDES.map((said) => itemsLeft(at, said)).join('+')}+ABS(SUM(${q(at, 'saved')})-${at(`total.${TOTAL}.saved`)})<${CENT},"closes","does not close")))`,
      style: 'result',
    },
    ...Array.from({ length: 5 }, () => text('', 'note')),
    text('the items add up to the total, and the savings of the beers to the difference of both totals', 'note'),
  ],
};

export const totalLines: readonly Line[] = [
  heading('The year, all beers'),
  titles(['Item', 'Now', 'Proposed', UNIT, 'Saved'], [1, 3]),
  ...MONEY.map((item) => line(item, 'money', (at, side) => costOf(at, side, item))),
  ...QUANTITIES.map(({ label, unit, formula }) => line(label, unit, (at, side) => sumOf(at, formula(at, side)))),
  proof,
  note(`${filtrationCost.method}.`),
  gap,
];
