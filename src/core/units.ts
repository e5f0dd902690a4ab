/** A unit's way to SI: SI = (value + offset) × up / down. Whole numbers on one side keep it to one rounding. */
export interface UnitDefinition {
  /** What the unit measures; units of one kind convert into each other. */
  readonly kind: string;
  readonly up: number;
  readonly down: number;
  readonly offset: number;
}

const unit = <const K extends string>(kind: K, up = 1, down = 1, offset = 0) => ({ kind, up, down, offset }) as const;

/** Every unit that a cell, a report or a message may name. Money is whatever currency the caller reckons in. */
export const UNITS = {
  '': unit('number'),
  fraction: unit('fraction'),
  'as given': unit('as given'),
  kg: unit('mass'),
  g: unit('mass', 1, 1e3),
  t: unit('mass', 1e3),
  pg: unit('mass', 1, 1e15),
  'kg/kg': unit('mass per mass'),
  'mg/kg': unit('mass per mass', 1, 1e6),
  hL: unit('volume', 1, 10),
  L: unit('volume', 1, 1e3),
  mL: unit('volume', 1, 1e6),
  'm³': unit('volume'),
  'hL/h': unit('flow', 1, 36_000),
  'L/h': unit('flow', 1, 3.6e6),
  'kg/h': unit('mass flow', 1, 3600),
  'g/hL': unit('concentration', 1, 100),
  'mg/L': unit('concentration', 1, 1e3),
  'g/L': unit('concentration'),
  'per g/hL': unit('per concentration', 100),
  'mg/m³': unit('concentration', 1, 1e6),
  'kg/m³': unit('density'),
  'million/mL': unit('number density', 1e12),
  'm²': unit('area'),
  'cm²': unit('area', 1, 1e4),
  'g/m²': unit('load', 1, 1e3),
  'kg/m²': unit('load'),
  mm: unit('length', 1, 1e3),
  s: unit('time'),
  min: unit('time', 60),
  h: unit('time', 3600),
  d: unit('time', 86_400),
  'd per warm day': unit('time per time'),
  'hL/(m² h)': unit('flux', 1, 36_000),
  bar: unit('pressure', 1e5),
  'bar/h': unit('pressure rise', 250, 9),
  'bar/hL': unit('pressure per volume', 1e6),
  mPa·s: unit('viscosity', 1, 1e3),
  darcy: unit('permeability', 1e-7, 101_325),
  'm/kg': unit('cake resistance'),
  '1/m': unit('medium resistance'),
  's/m⁶': unit('leaf test slope'),
  's/m³': unit('leaf test intercept'),
  '°C': unit('temperature', 1, 1, 273.15),
  EBC: unit('haze'),
  kWh: unit('energy', 3.6e6),
  money: unit('money'),
  'money/kg': unit('price per mass'),
  'money/t': unit('price per mass', 1, 1e3),
  'money/hL': unit('price per volume', 10),
  'money/m³': unit('price per volume'),
  'money/kWh': unit('price per energy', 1, 3.6e6),
  'money/h': unit('price per time', 1, 3600),
} as const satisfies Readonly<Record<string, UnitDefinition>>;

/** The name of a unit, as sheets write it: `hL/h`, `g/hL`, `mPa·s`; the empty text is a plain number. */
export type Unit = keyof typeof UNITS;

/** The way of one unit to SI. */
export const definition = (name: Unit): UnitDefinition => UNITS[name];

/** A value in the named unit, in SI: `toSI(1, 'bar')` is 100 000 (Pa). Not a number stays so. */
export function toSI(value: number, name: Unit): number {
  const { up, down, offset } = definition(name);
  return ((value + offset) * up) / down;
}

/** `toSI` for a whole column, where it stands. */
export function columnToSI(values: Float64Array, name: Unit): Float64Array {
  const { up, down, offset = 0 } = definition(name);
  for (let row = 0; row < values.length; row++) values[row] = (((values[row] as number) + offset) * up) / down;
  return values;
}

/** A value in SI, in the named unit: `fromSI(100_000, 'bar')` is 1. */
export function fromSI(value: number, name: Unit): number {
  const { up, down, offset } = definition(name);
  return (value * down) / up - offset;
}
