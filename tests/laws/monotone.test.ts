import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { catalogue } from '../../src/catalogue.js';
import { CellError, call } from '../functions/answers.js';
import { likelyPlan, within } from '../plan/anyPlan.js';
import { type Changed, columnsOf } from '../plan/columns.js';

type Way = 'up' | 'down';

/** How the answer of a function goes as one of its inputs grows, the others at their example. */
const WAYS: Readonly<Record<string, Readonly<Record<string, Way>>>> = {
  DRYMASS: { mass: 'up', moisture: 'down' },
  ASISMASS: { dryMass: 'up', moisture: 'up' },
  SAMESOLIDS: { amount: 'up', moisture: 'down', newMoisture: 'up' },
  OVENMOISTURE: { drySample: 'down', wetSample: 'up' },
  DRYBASIS: { moisture: 'up' },
  WETBASIS: { waterPerDry: 'up' },
  DRYPRICE: { price: 'up', moisture: 'up' },
  MOISTURECREDIT: { agreedMoisture: 'down', foundMoisture: 'up' },
  SWAPDOSE: { dose: 'up', position: 'up' },
  CONTACTTANK: { flow: 'up', contact: 'up' },
  CONTACTTIME: { tank: 'up', flow: 'down' },
  WARMDAYLIFE: { warmDays: 'up', factor: 'up' },
  STORAGELIFE: { days: 'up', newTemperature: 'down' },
  SULPHITECARRY: { dose: 'up', content: 'up' },
  PRECOATMASS: { area: 'up', load: 'up' },
  CAKEDEPTH: { load: 'up', density: 'down' },
  CAKELOAD: { depth: 'up', density: 'up' },
  SLURRYSTRENGTH: { powder: 'up', water: 'down', density: 'up' },
  SLURRYWATER: { powder: 'up', strength: 'down', density: 'up' },
  BODYFEED: { flow: 'up', dose: 'up' },
  PUMPRATE: { flow: 'up', dose: 'up', strength: 'down' },
  DOSEMADE: { pump: 'up', strength: 'up', flow: 'down' },
  CHARGEHOURS: { tank: 'up', pump: 'down' },
  SOLIDSLOAD: { cells: 'up', cellMass: 'up', other: 'up' },
  CAKESOLIDS: {
    feed: 'up',
    stabiliser: 'up',
    stabiliserMoisture: 'down',
    beerSolids: 'up',
    removed: 'down',
    aidMoisture: 'down',
  },
  FEEDAFTERSWAP: { feed: 'up', stabiliser: 'down', credit: 'down' },
  WATERVISCOSITY: { temperature: 'down' },
  BEERVISCOSITY: { temperature: 'down', viscosityAt20: 'up' },
  CAKERESISTANCE: { permeability: 'down', density: 'down' },
  CAKEPERMEABILITY: { resistance: 'down', density: 'down' },
  TESTPERMEABILITY: { filtrate: 'up', time: 'down', area: 'down', depth: 'up', pressure: 'down', viscosity: 'up' },
  CAKEPRESSURE: { flux: 'up', viscosity: 'up', load: 'up', resistance: 'up', medium: 'up' },
  FEEDRISE: {
    aidPermeability: 'down',
    beerSolidsPermeability: 'down',
    beerSolids: 'up',
    flux: 'up',
    viscosity: 'up',
    cakeDensity: 'down',
  },
  COSTPERHL: { dose: 'up', price: 'up' },
  POWDERPERHL: { precoat: 'up', feed: 'up', run: 'down' },
  LANDEDPRICE: { packPrice: 'up', packMass: 'down', freight: 'up', discount: 'down', duty: 'up', loss: 'up' },
  SPENTCAKE: { dryPowder: 'up', dryMatter: 'down', beerSolids: 'up' },
  DISPOSALCOST: { wetCake: 'up', price: 'up', haul: 'up', load: 'down' },
  YEARPOWDER: { volume: 'up', dose: 'up' },
  RUNSPERYEAR: { volume: 'up', run: 'down' },
  BREAKEVENPRICE: { presentCost: 'up', otherCost: 'down', dose: 'down' },
  POLYPHENOLS: { absorbance: 'up', dilution: 'up' },
};

const LAWS = Object.entries(WAYS).flatMap(([id, ways]) =>
  Object.entries(ways).map(([key, way]) => [id, key, way] as const),
);

/** No answer at a place says nothing about the way. */
const numberAt = (answer: unknown): number | undefined =>
  Array.isArray(answer) && typeof answer[0][0] === 'number' ? answer[0][0] : undefined;

describe('as one input grows, the others at their example,', () => {
  it.each(LAWS)('%s by its %s goes %s', (id, key, way) => {
    const declared = catalogue.find((one) => one.id === id);
    const input = declared?.inputs[key];
    if (input?.kind !== 'number') throw new Error(`${id} has no number ${key}.`);
    const example = declared?.example.given as Readonly<Record<string, unknown>>;
    const at = (value: number) =>
      numberAt(
        call(
          id,
          ...Object.keys(declared?.inputs ?? {}).map((one) => (one === key ? [[value]] : (example[one] ?? null))),
        ),
      );
    const [least, most] = input.limit;
    const aboutTheExample = fc
      .double({ min: 0.5, max: 2, noNaN: true })
      .map((factor) => Math.min(most, Math.max(least, factor * Number(example[key] ?? least))));
    const value = fc.oneof(within(input.limit), aboutTheExample);
    let compared = 0;
    fc.assert(
      fc.property(value, value, (one, other) => {
        const [less, more] = [at(Math.min(one, other)), at(Math.max(one, other))];
        if (less === undefined || more === undefined) return;
        if (less !== more) compared++;
        const grown = way === 'up' ? more - less : less - more;
        expect(grown).toBeGreaterThanOrEqual(-1e-12 * Math.abs(less));
      }),
      cases(200),
    );
    expect(compared).toBeGreaterThan(0);
  });
});

/** How a run's length goes as a label of its plan grows. The body feed is left aside: its best lies in the middle. */
const RUN_WAYS: readonly (readonly [keyof Changed, Way])[] = [
  ['viscosity', 'down'],
  ['startPressure', 'down'],
  ['pressureLimit', 'up'],
  ['cakeSpace', 'up'],
  ['runLimit', 'up'],
  ['precoatLoad', 'down'],
  ['cakeDensity', 'up'],
  ['aidPermeability', 'up'],
  ['beerSolidsPermeability', 'up'],
  ['stabiliserPermeability', 'up'],
];

/** What makes filtration dearer, the run being the same. */
const PRICES: readonly (keyof Changed)[] = [
  ...(['aidPrice', 'stabiliserPrice', 'disposalPrice', 'waterPrice', 'energyPrice', 'beerValue'] as const),
  ...(['labourPrice', 'downtimeCost', 'cleaningCost', 'otherCost', 'runWater', 'runEnergy', 'runBeerLoss'] as const),
];

const factor = fc.double({ min: 1, max: 3, noNaN: true });

describe('a plan', () => {
  it.each(RUN_WAYS)('has a run that by its %s goes %s', (key, way) => {
    fc.assert(
      fc.property(likelyPlan, factor, (values, by) => {
        // On a candle more precoat widens the septum, so that law holds for a flat one alone.
        const plan: Changed = { ...values, runLimit: 2000, ...(key === 'precoatLoad' ? { septumRadius: 0 } : {}) };
        const length = (changed: Changed) => numberAt(call('RUNLENGTH', ...columnsOf(changed)));
        const less = length(plan);
        const more = length({ ...plan, [key]: (plan[key] as number) * by });
        if (less === undefined || more === undefined) return;
        expect(way === 'up' ? more - less : less - more).toBeGreaterThanOrEqual(-1e-9 * less);
      }),
      cases(100),
    );
  });

  it.each(PRICES)('never costs less by a greater %s', (key) => {
    fc.assert(
      fc.property(likelyPlan, fc.double({ min: 0, max: 100, noNaN: true }), (values, more) => {
        const total = (changed: Changed) => {
          const answer = call('FILTRATIONCOST', ...columnsOf(changed));
          if (answer instanceof CellError) return undefined;
          return (answer as [string, number][]).find(([item]) => item === 'Total')?.[1];
        };
        const before = total({ ...values, [key]: 1 });
        const after = total({ ...values, [key]: 1 + more });
        if (before !== undefined) expect(after).toBeGreaterThanOrEqual(before * (1 - 1e-12));
      }),
      cases(50),
    );
  });
});
