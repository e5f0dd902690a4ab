import { isMemorable, LONGEST_NAME } from '../core/names.js';
import { nearestOf } from '../core/nearest.js';
import { CONVERTIBLE } from '../core/otherUnits.js';
import type { Refused } from '../core/output.js';
import { refused } from '../core/read.js';
import type { UnitDefinition } from '../core/units.js';
import { quoted } from '../core/wording.js';

/** Other ways in which people write the same unit, once powers and spaces are alike. */
const ALIASES: Readonly<Record<string, string>> = {
  'us gallon': 'US gal',
  'uk gallon': 'UK gal',
  'imp gal': 'UK gal',
  'us beer bbl': 'US beer barrel',
  'uk beer barrel': 'UK barrel',
  'uk bbl': 'UK barrel',
  'lb/us beer bbl': 'lb/US beer barrel',
  'lb/100 us beer barrel': 'lb/100 US beer barrels',
  'lb/1000 us beer barrel': 'lb/1000 US beer barrels',
  'lb/100 uk barrel': 'lb/100 UK barrels',
  'hl/m²/h': 'hL/(m² h)',
  'hl/(m²·h)': 'hL/(m² h)',
  'l/(m²·h)': 'L/(m² h)',
  'mpa.s': 'mPa·s',
  'mpa s': 'mPa·s',
  mpas: 'mPa·s',
  'pa.s': 'Pa·s',
  'pa s': 'Pa·s',
  md: 'millidarcy',
  mdarcy: 'millidarcy',
  c: '°C',
  degc: '°C',
  f: '°F',
  degf: '°F',
  'ug/m³': 'µg/m³',
  'asbc ftu': 'ASBC',
};

/** Units that the trade uses and that cannot be converted as they stand, each with the reason. */
const UNFIT: readonly (readonly [RegExp, string])[] = [
  [
    /\b(barrels?|bbls?)\b/i,
    'a barrel is 31 US gallons (117.35 L) of beer in the US and 36 imperial gallons (163.66 L) in the UK: write US beer barrel or UK barrel.',
  ],
  [/\bgal(lons?)?\b/i, 'a US gallon holds 3.785 L and a UK gallon 4.546 L: write US gal or UK gal.'],
  [/^ppm$/i, 'parts per million by mass depend on the density of the beer: write mg/L for mass in volume.'],
  [/^jtu$/i, 'JTU has no defined factor to the other units of haze.'],
];

/**
 * One spelling for all ways of typing a unit. Case is let pass, except that a leading M is mega and a leading m
 * milli: ML must not become mL.
 */
const spelled = (text: string): string =>
  text
    .slice(0, LONGEST_NAME)
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/μ/g, 'µ')
    .replace(/(?<=\p{L})\^?2\b/gu, '²')
    .replace(/(?<=\p{L})\^?3\b/gu, '³')
    .replace(/\bM(?=\p{L})/gu, 'mega ')
    .toLowerCase();

export interface NamedUnit {
  readonly name: string;
  /** One for each kind of thing that the unit measures. */
  readonly definitions: readonly UnitDefinition[];
}

const named = (name: string): NamedUnit => ({
  name,
  definitions: CONVERTIBLE.filter(([other]) => other === name).map(([, definition]) => definition),
});

const NAMES: ReadonlyMap<string, NamedUnit> = new Map([
  ...CONVERTIBLE.map(([name]) => [spelled(name), named(name)] as const),
  ...Object.entries(ALIASES).map(([alias, name]) => [alias, named(name)] as const),
]);

const nearest = (word: string): string => NAMES.get(nearestOf(NAMES.keys(), word) ?? '')?.name ?? '';

/** The unit, or the rest of the sentence that refuses the text. */
function lookUp(text: string): NamedUnit | string {
  const word = spelled(text);
  const found = NAMES.get(word);
  if (found !== undefined) return found;
  const reason = UNFIT.find(([pattern]) => pattern.test(text.trim()))?.[1];
  return reason === undefined
    ? `must be a unit, but ${quoted(text)} is none that is known here. The nearest is ${nearest(word)}.`
    : `cannot be ${quoted(text)}: ${reason}`;
}

/** A column of 100,000 rows names the same few units over and over; what a column of slips names is let go again. */
const MOST_REMEMBERED = 200;
const remembered = new Map<string, NamedUnit | string>();

/** The unit that a text names, or the sentence that says why there is none. */
export function unitNamed(label: string, text: string): NamedUnit | Refused {
  let found = remembered.get(text);
  if (found === undefined) {
    if (remembered.size >= MOST_REMEMBERED) remembered.clear();
    found = lookUp(text);
    if (isMemorable(text)) remembered.set(text, found);
  }
  return typeof found === 'string' ? refused(`${label} ${found}`) : found;
}

/** Every unit by its kind, for the reference. */
export function unitsInWords(): string {
  const kinds = [...new Set(CONVERTIBLE.map(([, { kind }]) => kind))];
  return kinds
    .map((kind) => ({ kind, names: CONVERTIBLE.filter(([, one]) => one.kind === kind).map(([name]) => name) }))
    .filter(({ names }) => names.length > 1)
    .map(({ kind, names }) => `${kind}: ${names.join(', ')}`)
    .join('; ');
}
