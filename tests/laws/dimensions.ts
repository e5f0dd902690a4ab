/** Powers of mass, length, time, money and haze. Temperature is left as it is: no formula here is a power of it. */
export type Dimension = readonly [mass: number, length: number, time: number, money: number, haze: number];

const of = (mass: number, length: number, time: number, money = 0, haze = 0): Dimension => [
  mass,
  length,
  time,
  money,
  haze,
];

/** The dimension of every kind of unit, from the definitions of mechanics and not from the unit table. */
export const DIMENSIONS: Readonly<Record<string, Dimension>> = {
  number: of(0, 0, 0),
  fraction: of(0, 0, 0),
  'as given': of(0, 0, 0),
  mass: of(1, 0, 0),
  'mass per mass': of(0, 0, 0),
  volume: of(0, 3, 0),
  flow: of(0, 3, -1),
  'mass flow': of(1, 0, -1),
  concentration: of(1, -3, 0),
  'per concentration': of(-1, 3, 0),
  density: of(1, -3, 0),
  'number density': of(0, -3, 0),
  area: of(0, 2, 0),
  load: of(1, -2, 0),
  length: of(0, 1, 0),
  time: of(0, 0, 1),
  'time per time': of(0, 0, 0),
  flux: of(0, 1, -1),
  pressure: of(1, -1, -2),
  'pressure rise': of(1, -1, -3),
  'pressure per volume': of(1, -4, -2),
  viscosity: of(1, -1, -1),
  permeability: of(0, 2, 0),
  'cake resistance': of(-1, 1, 0),
  'medium resistance': of(0, -1, 0),
  'leaf test slope': of(0, -6, 1),
  'leaf test intercept': of(0, -3, 1),
  temperature: of(0, 0, 0),
  haze: of(0, 0, 0, 0, 1),
  energy: of(1, 2, -2),
  money: of(0, 0, 0, 1),
  'price per mass': of(-1, 0, 0, 1),
  'price per volume': of(0, -3, 0, 1),
  'price per energy': of(-1, -2, 2, 1),
  'price per time': of(0, 0, -1, 1),
};

/** By what a quantity grows when the base units shrink by these factors. */
export const growth = (kind: string, factors: Dimension): number => {
  const dimension = DIMENSIONS[kind];
  if (dimension === undefined) throw new Error(`The kind ${kind} has no dimension here.`);
  return dimension.reduce((product, power, base) => product * (factors[base] as number) ** power, 1);
};
