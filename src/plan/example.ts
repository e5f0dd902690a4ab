import { PLAN } from './table.js';

/** An invented plan in the units of its labels; every example starts from it. */
const VALUES: Partial<Record<keyof typeof PLAN, number>> = {
  area: 50,
  flow: 250,
  viscosity: 2.8,
  startPressure: 0.6,
  pressureLimit: 4.5,
  cakeSpace: 6.5,
  precoatLoad: 800,
  bodyFeed: 90,
  aidMoisture: 0.005,
  stabiliserDose: 60,
  stabiliserMoisture: 0.65,
  beerSolids: 25,
  cakeDensity: 300,
  aidPermeability: 0.1,
  beerSolidsPermeability: 1e-4,
  stabiliserPermeability: 0.02,
  aidPrice: 0.8,
  stabiliserPrice: 2.4,
  dryMatter: 0.25,
  disposalPrice: 70,
  runWater: 150,
  waterPrice: 3.5,
  runEnergy: 500,
  energyPrice: 0.1,
  runBeerLoss: 6,
  beerValue: 30,
  runLabour: 3,
  labourPrice: 42,
  turnaround: 4,
  downtimeCost: 60,
  cleaningCost: 60,
  yearVolume: 500_000,
};

/** Values by label, some of them changed; undefined leaves a label out. */
export function examplePlan(
  changed: Partial<Record<keyof typeof PLAN, number | undefined>> = {},
): Readonly<Record<string, number>> {
  const values = Object.entries({ ...VALUES, ...changed }).filter((entry) => entry[1] !== undefined);
  return Object.fromEntries(values.map(([key, value]) => [PLAN[key as keyof typeof PLAN].label, value as number]));
}

export const EXAMPLE = { values: examplePlan() } as const;

/** Of the invented plan, what several beers on the same filter share. */
export function sharedExample(): Readonly<Record<string, number>> {
  const own: readonly string[] = [
    PLAN.viscosity,
    PLAN.beerSolids,
    PLAN.bodyFeed,
    PLAN.stabiliserDose,
    PLAN.yearVolume,
  ].map(({ label }) => label);
  return Object.fromEntries(Object.entries(examplePlan()).filter(([label]) => !own.includes(label)));
}
