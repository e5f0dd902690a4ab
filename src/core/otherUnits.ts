import { UNITS, type UnitDefinition } from './units.js';

/**
 * Units that no cell of a calculation is in, but that lots, drawings and reports from elsewhere are: TOUNIT
 * reads them. SI = (value + offset) × up / down, as in `UNITS`.
 *
 * Exact by definition: US gallon 231 cubic inches (27 CFR 25.11), US beer barrel 31 US gallons (27 CFR 25.11),
 * imperial gallon 4.54609 L and UK barrel 36 of them, international pound 0.45359237 kg, foot 0.3048 m, standard
 * gravity 9.80665 m/s², standard atmosphere 101 325 Pa.
 */
const US_GALLON = [3_785_411_784, 1e12] as const;
const US_BARREL = [31 * 3_785_411_784, 1e12] as const;
const UK_GALLON = [454_609, 1e8] as const;
const UK_BARREL = [36 * 454_609, 1e8] as const;
const POUND = [45_359_237, 1e8] as const;
const OUNCE = [45_359_237, 16e8] as const;
const FOOT = [3048, 1e4] as const;
const SQUARE_FOOT = [9_290_304, 1e8] as const;
const CUBIC_FOOT = [28_316_846_592, 1e12] as const;
const POUND_FORCE = [44_482_216_152_605, 1e13] as const;

type Ratio = readonly [up: number, down: number];

const one: Ratio = [1, 1];
const times = (first: Ratio, second: Ratio): Ratio => [first[0] * second[0], first[1] * second[1]];
const per = (first: Ratio, second: Ratio): Ratio => [first[0] * second[1], first[1] * second[0]];
const HOUR: Ratio = [3600, 1];
const MINUTE: Ratio = [60, 1];

const unit = (kind: string, [up, down]: Ratio = one, offset = 0): UnitDefinition => ({ kind, up, down, offset });

/** A unit may measure two kinds of thing (m²: area and permeability), so this is a list and not a record. */
export const OTHER_UNITS: readonly (readonly [name: string, definition: UnitDefinition])[] = [
  ['US gal', unit('volume', US_GALLON)],
  ['UK gal', unit('volume', UK_GALLON)],
  ['US fl oz', unit('volume', per(US_GALLON, [128, 1]))],
  ['US beer barrel', unit('volume', US_BARREL)],
  ['UK barrel', unit('volume', UK_BARREL)],
  ['ft³', unit('volume', CUBIC_FOOT)],
  ['lb', unit('mass', POUND)],
  ['oz', unit('mass', OUNCE)],
  ['kg/hL', unit('concentration', [10, 1])],
  ['g/m³', unit('concentration', [1, 1000])],
  ['µg/m³', unit('concentration', [1, 1e9])],
  ['lb/US beer barrel', unit('concentration', per(POUND, US_BARREL))],
  ['lb/100 US beer barrels', unit('concentration', per(POUND, times(US_BARREL, [100, 1])))],
  ['lb/1000 US beer barrels', unit('concentration', per(POUND, times(US_BARREL, [1000, 1])))],
  ['oz/US beer barrel', unit('concentration', per(OUNCE, US_BARREL))],
  ['lb/UK barrel', unit('concentration', per(POUND, UK_BARREL))],
  ['lb/100 UK barrels', unit('concentration', per(POUND, times(UK_BARREL, [100, 1])))],
  ['oz/UK barrel', unit('concentration', per(OUNCE, UK_BARREL))],
  ['g/cm³', unit('density', [1000, 1])],
  ['kg/L', unit('density', [1000, 1])],
  ['lb/ft³', unit('density', per(POUND, CUBIC_FOOT))],
  ['lb/ft²', unit('load', per(POUND, SQUARE_FOOT))],
  ['lb/100 ft²', unit('load', per(POUND, times(SQUARE_FOOT, [100, 1])))],
  ['m³/h', unit('flow', per(one, HOUR))],
  ['US gal/min', unit('flow', per(US_GALLON, MINUTE))],
  ['US beer barrel/h', unit('flow', per(US_BARREL, HOUR))],
  ['UK barrel/h', unit('flow', per(UK_BARREL, HOUR))],
  ['lb/h', unit('mass flow', per(POUND, HOUR))],
  ['m/h', unit('flux', per(one, HOUR))],
  ['m³/(m² h)', unit('flux', per(one, HOUR))],
  ['L/(m² h)', unit('flux', per([1, 1000], HOUR))],
  ['US gal/(min ft²)', unit('flux', per(per(US_GALLON, MINUTE), SQUARE_FOOT))],
  ['US beer barrel/(ft² h)', unit('flux', per(per(US_BARREL, HOUR), SQUARE_FOOT))],
  ['Pa', unit('pressure')],
  ['kPa', unit('pressure', [1000, 1])],
  ['MPa', unit('pressure', [1e6, 1])],
  ['mbar', unit('pressure', [100, 1])],
  ['atm', unit('pressure', [101_325, 1])],
  ['kgf/cm²', unit('pressure', [980_665, 10])],
  ['psi', unit('pressure', per(POUND_FORCE, [64_516, 1e8]))],
  ['lbf/ft²', unit('pressure', per(POUND_FORCE, SQUARE_FOOT))],
  ['millidarcy', unit('permeability', [1e-10, 101_325])],
  ['m²', unit('permeability')],
  ['ft²', unit('permeability', SQUARE_FOOT)],
  ['ft²', unit('area', SQUARE_FOOT)],
  ['Pa·s', unit('viscosity')],
  ['cP', unit('viscosity', [1, 1000])],
  ['lb/(ft s)', unit('viscosity', per(POUND, FOOT))],
  ['ft/lb', unit('cake resistance', per(FOOT, POUND))],
  ['m', unit('length')],
  ['cm', unit('length', [1, 100])],
  ['ft', unit('length', FOOT)],
  ['in', unit('length', [254, 1e4])],
  ['K', unit('temperature')],
  ['°F', unit('temperature', [5, 9], 459.67)],
  ['NTU', unit('haze', [1, 4])],
  ['FTU', unit('haze', [1, 4])],
  ['FNU', unit('haze', [1, 4])],
  ['ASBC', unit('haze', [1, 69])],
];

/** Kinds whose units are words, money or bare numbers: there is nothing to convert. */
const isConvertible = ({ kind }: UnitDefinition): boolean =>
  !['number', 'fraction', 'as given', 'money'].includes(kind) && !kind.startsWith('price per');

/** Every unit that TOUNIT reads: those of the cells first. */
export const CONVERTIBLE: readonly (readonly [name: string, definition: UnitDefinition])[] = [
  ...Object.entries<UnitDefinition>(UNITS).filter(([, definition]) => isConvertible(definition)),
  ...OTHER_UNITS,
];
