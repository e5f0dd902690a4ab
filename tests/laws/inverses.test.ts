import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { within } from '../plan/anyPlan.js';
import { number } from './figures.js';

const moisture = within([0, 0.999]);
const flow = within([0.001, 10_000]);
const dose = within([1e-3, 10_000]);
const strength = within([0.1, 1000]);
const density = within([20, 2000]);
const kind = fc.constantFrom('hydrogel', 'xerogel', 'adsorptive');

type Arguments = readonly (number | string)[];

/** There and back: what goes in first comes out again. */
const PAIRS: readonly (readonly [string, fc.Arbitrary<Arguments>, (args: Arguments) => number])[] = [
  [
    'ASISMASS undoes DRYMASS',
    fc.tuple(within([1e-3, 1e4]), moisture),
    ([m, w]) => number('ASISMASS', number('DRYMASS', m, w), w),
  ],
  ['WETBASIS undoes DRYBASIS', fc.tuple(within([1e-3, 0.999])), ([w]) => number('WETBASIS', number('DRYBASIS', w))],
  [
    'SAMESOLIDS comes back from the other moisture',
    fc.tuple(within([1e-3, 1e4]), moisture, moisture),
    ([x, one, other]) => number('SAMESOLIDS', number('SAMESOLIDS', x, one, other), other, one),
  ],
  [
    'OVENMOISTURE finds the moisture that DRYMASS was given',
    fc.tuple(within([1e-3, 0.99]), within([1, 1000])),
    ([w, m]) => number('OVENMOISTURE', m, number('DRYMASS', m, w)),
  ],
  [
    'SWAPDOSE comes back by the other end of the range',
    fc.tuple(within([1, 1000]), kind, kind, within([0, 1])),
    ([d, from, to, at]) => number('SWAPDOSE', number('SWAPDOSE', d, from, to, at), to, from, 1 - Number(at)),
  ],
  [
    'CONTACTTIME undoes CONTACTTANK',
    fc.tuple(within([0.01, 60]), within([1, 1000])),
    ([t, q]) => number('CONTACTTIME', number('CONTACTTANK', q, t), q),
  ],
  [
    'STORAGELIFE comes back from the other temperature',
    fc.tuple(within([1, 100]), within([0, 30]), within([0, 30]), within([1, 4])),
    ([days, one, other, q]) => number('STORAGELIFE', number('STORAGELIFE', days, one, other, q), other, one, q),
  ],
  [
    'DOSEMADE undoes PUMPRATE',
    fc.tuple(within([1, 500]), within([1, 1000]), within([1, 1000])),
    ([d, q, s]) => number('DOSEMADE', number('PUMPRATE', q, d, s), s, q),
  ],
  [
    'BODYFEED is what PUMPRATE carries at its strength',
    fc.tuple(dose, within([1, 1000]), strength),
    ([d, q, s]) => (number('PUMPRATE', q, d, s) * Number(s)) / 1000 / (number('BODYFEED', q, d) / Number(d)),
  ],
  [
    'CAKEPERMEABILITY undoes CAKERESISTANCE',
    fc.tuple(within([1e-6, 20]), density),
    ([k, rho]) => number('CAKEPERMEABILITY', number('CAKERESISTANCE', k, rho), rho),
  ],
  [
    'PARTPERMEABILITY undoes MIXPERMEABILITY',
    fc.tuple(within([1e-4, 10]), within([1e-4, 10]), within([1, 100]), within([1, 100])),
    ([own, other, share, rest]) =>
      number('PARTPERMEABILITY', number('MIXPERMEABILITY', [share, rest], [own, other]), share, [rest], [other]),
  ],
  [
    'TESTPERMEABILITY finds the cake that CAKEPRESSURE was given',
    fc.tuple(within([0.01, 2]), within([100, 500]), within([1, 10]), within([1, 5]), within([0.5, 5])),
    ([k, rho, flux, mu, load]) => {
      const bar = number('CAKEPRESSURE', flux, mu, load, number('CAKERESISTANCE', k, rho));
      // 1 hL/(m² h) through 10,000 cm² in an hour is 100,000 mL.
      return number('TESTPERMEABILITY', Number(flux) * 1e5, 3600, 10_000, number('CAKEDEPTH', load, rho), bar, mu);
    },
  ],
  [
    'BREAKEVENPRICE finds the price that COSTPERHL was given',
    fc.tuple(within([0.01, 100]), within([1, 1000])),
    ([price, d]) => number('BREAKEVENPRICE', number('COSTPERHL', d, price), 0, d),
  ],
  [
    'DRYPRICE of a LANDEDPRICE without extras is the price of the dry powder',
    fc.tuple(within([0.01, 100]), moisture),
    ([price, w]) => number('DRYPRICE', number('LANDEDPRICE', Number(price) * 25, 25), w) * number('DRYMASS', 1, w),
  ],
  [
    'RUNSPERYEAR times the run is the year',
    fc.tuple(within([100, 1e6]), within([100, 10_000])),
    ([year, run]) => number('RUNSPERYEAR', year, run) * Number(run),
  ],
  [
    'CHARGEHOURS empties the tank at its own rate',
    fc.tuple(within([1, 10_000]), flow),
    ([tank, pump]) => number('CHARGEHOURS', tank, pump) * Number(pump),
  ],
];

describe('there and back', () => {
  it.each(PAIRS)('%s', (_, given, back) => {
    fc.assert(
      fc.property(given, (args) => {
        const [first] = args as readonly [number];
        expect(Math.abs(back(args) - first)).toBeLessThanOrEqual(1e-9 * Math.abs(first));
      }),
      cases(200),
    );
  });
});
