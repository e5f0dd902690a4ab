// Units of CONVERT: symbols, factor to the quantity's first unit, and whether decimal prefixes go with it. Symbols from
// ECMA-376 part 1, 18.17.7.56 and OpenFormula 1.2, 6.16.18; factors by definition (BIPM SI brochure, NIST SP 811 app. B),
// with the pound, foot, inch and gallon of 1959.

type Unit = readonly [symbols: string, factor: number, prefixed?: true];

const POUND = 0.45359237;
const INCH = 0.0254;
const FOOT = 12 * INCH;
const YARD = 3 * FOOT;
const MILE = 1760 * YARD;
const SEA_MILE = 1852;
const GRAVITY = 9.80665;
const GALLON = 231 * INCH ** 3;
const UK_GALLON = 4.54609e-3;
const LIGHT_YEAR = 9_460_730_472_580_800;
const SURVEY_FOOT = 1200 / 3937;
const PICA = INCH / 72;
const ATMOSPHERE = 101_325;
const POUND_FORCE = POUND * GRAVITY;
const INTERNATIONAL_BTU = 1055.05585262;
const FOOT_POUND = FOOT * POUND_FORCE;

const power = (symbol: string, length: number, exponent: 2 | 3): Unit => [
  `${symbol}${exponent} ${symbol}^${exponent}`,
  length ** exponent,
];
const lengths: readonly (readonly [string, number])[] = [
  ['ang', 1e-10],
  ['ft', FOOT],
  ['in', INCH],
  ['ly', LIGHT_YEAR],
  ['mi', MILE],
  ['Nmi', SEA_MILE],
  ['Pica', PICA],
  ['Picapt', PICA],
  ['yd', YARD],
  ['m', 1],
];

export const UNITS: Readonly<Record<string, readonly Unit[]>> = {
  mass: [
    ['g', 1, true],
    ['u', 1.6605390666e-24, true],
    ['lbm', POUND * 1000],
    ['ozm', (POUND * 1000) / 16],
    ['grain', (POUND * 1000) / 7000],
    ['stone', POUND * 14_000],
    ['sg', (POUND_FORCE / FOOT) * 1000],
    ['cwt shweight', POUND * 100_000],
    ['uk_cwt lcwt hweight', POUND * 112_000],
    ['ton', POUND * 2_000_000],
    ['uk_ton LTON brton', POUND * 2_240_000],
  ],
  length: [
    ['m', 1, true],
    ['mi', MILE],
    ['Nmi', SEA_MILE],
    ['in', INCH],
    ['ft', FOOT],
    ['yd', YARD],
    ['ang', 1e-10, true],
    ['ell', 45 * INCH],
    ['ly', LIGHT_YEAR, true],
    ['parsec pc', (149_597_870_700 * 648_000) / Math.PI, true],
    ['Picapt Pica', PICA],
    ['pica', INCH / 6],
    ['survey_mi', 5280 * SURVEY_FOOT],
  ],
  time: [
    ['s sec', 1, true],
    ['mn min', 60],
    ['hr', 3600],
    ['day d', 86_400],
    ['yr', 365.25 * 86_400],
  ],
  pressure: [
    ['Pa p', 1, true],
    ['atm at', ATMOSPHERE, true],
    ['mmHg', 133.322387415, true],
    ['psi', POUND_FORCE / INCH ** 2],
    ['Torr', ATMOSPHERE / 760],
  ],
  force: [
    ['N', 1, true],
    ['dyn dy', 1e-5, true],
    ['lbf', POUND_FORCE],
    ['pond', GRAVITY / 1000, true],
  ],
  energy: [
    ['J', 1, true],
    ['e', 1e-7, true],
    ['c', 4.184, true],
    ['cal', 4.1868, true],
    ['eV ev', 1.602176634e-19, true],
    ['HPh hh', FOOT_POUND * 550 * 3600],
    ['Wh wh', 3600, true],
    ['flb', FOOT_POUND],
    ['BTU btu', INTERNATIONAL_BTU],
  ],
  power: [
    ['W w', 1, true],
    ['HP h', FOOT_POUND * 550],
    ['PS', 75 * GRAVITY],
  ],
  magnetism: [
    ['T', 1, true],
    ['ga', 1e-4, true],
  ],
  volume: [
    ['l L lt', 1e-3, true],
    ['gal', GALLON],
    ['qt', GALLON / 4],
    ['pt us_pt', GALLON / 8],
    ['cup', GALLON / 16],
    ['oz', GALLON / 128],
    ['tbs', GALLON / 256],
    ['tsp', GALLON / 768],
    ['tspm', 5e-6],
    ['uk_gal', UK_GALLON],
    ['uk_qt', UK_GALLON / 4],
    ['uk_pt', UK_GALLON / 8],
    ['barrel', 42 * GALLON],
    ['bushel', 2150.42 * INCH ** 3],
    ['GRT regton', 100 * FOOT ** 3],
    ['MTON', 40 * FOOT ** 3],
    ...lengths.map(([symbol, length]) => power(symbol, length, 3)),
  ],
  area: [
    ['ha', 1e4],
    ['ar', 100, true],
    ['Morgen', 2500],
    ['uk_acre', 4840 * YARD ** 2],
    ['us_acre', 43_560 * SURVEY_FOOT ** 2],
    ...lengths.map(([symbol, length]) => power(symbol, length, 2)),
  ],
  speed: [
    ['m/s m/sec', 1, true],
    ['m/h m/hr', 1 / 3600, true],
    ['mph', MILE / 3600],
    ['kn', SEA_MILE / 3600],
    ['admkn', (6080 * FOOT) / 3600],
  ],
  information: [
    ['bit', 1, true],
    ['byte', 8, true],
  ],
};

/** Temperatures: kelvins to a degree, and kelvins at zero. */
export const TEMPERATURES: readonly (readonly [symbols: string, size: number, zero: number, prefixed?: true])[] = [
  ['K kel', 1, 0, true],
  ['C cel', 1, 273.15],
  ['F fah', 5 / 9, 459.67 * (5 / 9)],
  ['Rank', 5 / 9, 0],
  ['Reau', 1.25, 273.15],
];

const DECIMAL = 'y z a f p n u m c d da e h k M G T P E Z Y'.split(' ');
const EXPONENTS = [-24, -21, -18, -15, -12, -9, -6, -3, -2, -1, 1, 1, 2, 3, 6, 9, 12, 15, 18, 21, 24];
export const PREFIXES: ReadonlyMap<string, number> = new Map(
  DECIMAL.map((symbol, place) => [symbol, Number(`1e${EXPONENTS[place]}`)]),
);
export const BINARY: ReadonlyMap<string, number> = new Map(
  'ki Mi Gi Ti Pi Ei Zi Yi'.split(' ').map((symbol, place) => [symbol, 1024 ** (place + 1)]),
);
