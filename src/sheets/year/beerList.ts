import { breakEvenPrice } from '../../cost/breakEvenPrice.js';
import { costPerHl } from '../../cost/costPerHl.js';
import { beerCost } from '../../plan/beerCost.js';
import { beerRun } from '../../plan/beerRun.js';
import { PLAN } from '../../plan/table.js';
import { standsAbove } from '../block.js';
import { call } from '../formula.js';
import type { At } from '../layout.js';
import type { Block, Calculated } from '../list.js';
import type { PlanKey } from '../planLines.js';
import { BEERS, type Beer } from './beers.js';
import { SIDES } from './lines.js';

/** Beers that the list has room for. */
const ROOM = 200;

interface Own {
  readonly key: keyof Beer & PlanKey;
  /** Which of a pair; both sides share the figure where it is no pair. */
  readonly side?: 0 | 1;
}

/** What each beer states for itself. */
export const OWN: readonly Own[] = [
  { key: 'yearVolume' },
  { key: 'viscosity' },
  { key: 'beerSolids' },
  { key: 'bodyFeed', side: 0 },
  { key: 'stabiliserDose', side: 0 },
  { key: 'bodyFeed', side: 1 },
  { key: 'stabiliserDose', side: 1 },
];

const columnOf = ({ key, side }: Own): string => (side === undefined ? key : `${key}.${side}`);

/** Where the list has a beer’s own figure; nothing where all beers share it. */
export function ownColumn(key: PlanKey, side: number): string | undefined {
  const found = OWN.find((own) => own.key === key && (own.side ?? side) === side);
  return found && columnOf(found);
}

const ownValue = (beer: Beer, { key, side }: Own): number => {
  const value = beer[key];
  return typeof value === 'number' ? value : value[side ?? 0];
};

/** The arguments of a function of several beers: what they share, and what each has for itself. */
export const ofBeers = (at: At, side: number): readonly string[] => [
  at('year.labels'),
  at(`year.${side}`),
  ...(['viscosity', 'beerSolids', 'bodyFeed', 'stabiliserDose'] as const).map((key) =>
    at(`beers.${ownColumn(key, side)}`),
  ),
];

const ofSide = (key: string, label: string, calculation: typeof beerRun | typeof beerCost): readonly Calculated[] =>
  SIDES.map((said, side) => ({
    key: `${key}.${side}`,
    label: `${label} ${said}`,
    unit: calculation.output.unit,
    formula: (_, at) => call(calculation.id, ofBeers(at, side)),
  }));

/** The price at which a beer costs as much both ways: all but the proposed stabiliser’s own cost stays as it is. */
const breakEven = (q: (key: string) => string, at: At): string => {
  const dose = q('stabiliserDose.1');
  const own = call(costPerHl.id, [dose, at('shared.stabiliserPrice.1')]);
  return call(breakEvenPrice.id, [q('cost.0'), `${q('cost.1')}-${own}`, dose]);
};

const numbered = (name: string, { key, side }: Own): string =>
  `${PLAN[key].label}${side === undefined ? '' : ` ${name}`}`;

/** Beers on one filter, one a row. */
export const beerList: Block = {
  name: 'beers',
  what: 'beer',
  room: ROOM,
  given: [
    { key: 'name', label: 'Beer', help: 'What you call the beer.' },
    ...OWN.map((own) => ({
      key: columnOf(own),
      label: numbered(SIDES[own.side ?? 0], own),
      declared: PLAN[own.key],
    })),
  ],
  calculated: [
    ...ofSide('run', 'Run', beerRun),
    ...ofSide('cost', 'Cost', beerCost),
    {
      key: 'saved',
      label: 'Saved per year',
      unit: 'money',
      formula: (q) => `(${q('cost.0')}-${q('cost.1')})*${q('yearVolume')}`,
    },
    { key: 'breakEven', label: breakEvenPrice.output.label, unit: breakEvenPrice.output.unit, formula: breakEven },
  ],
  examples: BEERS.map((beer, index) => ({
    name: `Beer ${index + 1}`,
    ...Object.fromEntries(OWN.map((own) => [columnOf(own), ownValue(beer, own)])),
  })),
  told: [
    ['name', 'yearVolume', 'bodyFeed.0', 'stabiliserDose.0'],
    ['viscosity', 'beerSolids', 'bodyFeed.1', 'stabiliserDose.1'],
  ],
  rules: (column) => [
    ['unusual', standsAbove(column('name')), 'name', 'stands further up as well: both are in the sums.'],
  ],
};
