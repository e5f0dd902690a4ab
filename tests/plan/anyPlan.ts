import fc from 'fast-check';
import { PLAN } from '../../src/plan/table.js';

type Key = keyof typeof PLAN;
type Values = Partial<Record<Key, number | undefined>>;

/** A number of a span; over several powers of ten as likely small as large. Both ends turn up. */
export function within([least, most]: readonly [number, number]): fc.Arbitrary<number> {
  const plain = fc.double({ min: least, max: most, noNaN: true });
  const ends = fc.constantFrom(least, most);
  const floor = least > 0 ? least : most * 1e-9;
  if (most <= 0 || most / floor < 1000)
    return fc.oneof({ weight: 9, arbitrary: plain }, { weight: 1, arbitrary: ends });
  const scaled = fc
    .double({ min: Math.log(floor), max: Math.log(most), noNaN: true })
    .map((power) => Math.min(most, Math.max(least, Math.exp(power))));
  return fc.oneof({ weight: 8, arbitrary: scaled }, { weight: 1, arbitrary: plain }, { weight: 1, arbitrary: ends });
}

const PERMEABILITIES: readonly Key[] = ['aidPermeability', 'beerSolidsPermeability', 'stabiliserPermeability'];

/** Every plan within its limits, by permeabilities or by one resistance. */
export const planWithinLimits: fc.Arbitrary<Values> = fc
  .tuple(
    fc.record(Object.fromEntries(Object.entries(PLAN).map(([key, { limit }]) => [key, within(limit)]))),
    fc.boolean(),
  )
  .map(([values, byResistance]) => {
    const left = byResistance ? PERMEABILITIES : (['cakeResistance'] as const);
    return { ...values, ...Object.fromEntries(left.map((key) => [key, undefined])) };
  });

/** Plans as a brewery might have them, by permeabilities, flat or round, rigid or not. */
export const likelyPlan: fc.Arbitrary<Values> = fc.record({
  area: within([10, 150]),
  flow: within([100, 600]),
  viscosity: within([2, 3.5]),
  startPressure: within([0.2, 1]),
  pressureLimit: within([1.5, 8]),
  cakeSpace: within([2, 10]),
  septumRadius: fc.constantFrom(0, 0, 12, 16, 30),
  runLimit: fc.constantFrom(0, 0, 0, 1500, 4000),
  precoatLoad: within([500, 1500]),
  bodyFeed: within([0, 300]),
  aidMoisture: within([0, 0.05]),
  stabiliserDose: fc.constantFrom(0, 30, 60, 90),
  stabiliserMoisture: within([0, 0.7]),
  stabiliserRemoved: fc.constantFrom(0, 0, 0.5, 1),
  beerSolids: within([3, 80]),
  cakeDensity: within([200, 420]),
  compressibility: fc.constantFrom(0, 0, 0.2, 0.5),
  aidPermeability: within([0.02, 1]),
  beerSolidsPermeability: within([1e-6, 1e-2]),
  stabiliserPermeability: within([1e-4, 0.2]),
  aidPrice: fc.constantFrom(0, 0.5, 0.8, 2),
  disposalPrice: fc.constantFrom(0, 70, 300),
  downtimeCost: fc.constantFrom(0, 60, 2000),
});
