import { calculation } from '../core/calculation.js';
import { isRefused, refused } from '../core/read.js';
import type { UnitDefinition } from '../core/units.js';
import { plainNumber } from '../core/wording.js';
import { type NamedUnit, unitNamed, unitsInWords } from './unitNames.js';

/** Both ratios are joined before the value meets them, and offsets are taken in hundredths, so that 68 °F is 20 °C. */
function convert(value: number, from: UnitDefinition, to: UnitDefinition): number {
  const up = from.up * to.down;
  const down = from.down * to.up;
  const [own = 0, other = 0] = [from.offset, to.offset].map((offset = 0) => Math.round(offset * 100));
  if (own === other && up === down) return value;
  if (own === 0 && other === 0) return (value * up) / down;
  return (((value * 100 + own) * up) / down - other) / 100;
}

const kindOf = ({ name, definitions }: NamedUnit): string =>
  `${name} measures ${definitions.map(({ kind }) => kind).join(' or ')}`;

const FROM = {
  kind: 'text',
  label: 'From',
  help: 'Unit of the value, as units are written: hL, m³ or m3, g/hL, psi.',
} as const;

export const toUnit = calculation({
  id: 'TOUNIT',
  summary: 'A value in another unit of the same kind.',
  question: 'What is this figure in the units of my sheet?',
  inputs: {
    value: {
      kind: 'number',
      label: 'Value',
      unit: 'as given',
      limit: [-1e100, 1e100],
      help: 'The figure to convert.',
      source: 'The limits only keep the answer within the numbers that a worksheet can hold.',
    },
    from: FROM,
    to: { ...FROM, label: 'To', help: 'Unit of the answer. A barrel is named in full: US beer barrel or UK barrel.' },
  },
  output: { kind: 'number', label: 'Value in the other unit', unit: 'as given' },
  method: `value × SI value of the one unit / SI value of the other, temperatures with their zero. Units — ${unitsInWords()}`,
  sources: [
    'US gallon of 231 cubic inches and US beer barrel of 31 gallons: 27 CFR 25.11. UK gallon of 4.54609 L: Units of Measurement Regulations 1995; UK barrel of 36 gallons.',
    'International pound and foot of 1959; standard gravity 9.80665 m/s²; 1 darcy = 1 cm² mPa·s/(s atm).',
    'Haze: 1 EBC = 4 NTU, FTU or FNU = 69 ASBC units (National Physical Laboratory, UK, Haze measurements in beer; its table rounds 69 to 70). Meters that differ in angle or wavelength do not agree by any factor.',
  ],
  example: { given: { value: 1, from: 'US beer barrel', to: 'L' }, result: 117.347_765_304 },
  compute: ({ value, from, to }) => {
    const own = unitNamed('From', from);
    if (isRefused(own)) return own;
    const other = unitNamed('To', to);
    if (isRefused(other)) return other;
    for (const one of own.definitions) {
      const match = other.definitions.find(({ kind }) => kind === one.kind);
      if (match === undefined) continue;
      const coldest = -(one.offset ?? 0);
      return one.kind === 'temperature' && value < coldest
        ? refused(
            `Value must be at least ${plainNumber(coldest)} ${own.name}, absolute zero, but ${plainNumber(value)} was given.`,
          )
        : convert(value, one, match);
    }
    return refused(`From and To must be of one kind, but ${kindOf(own)} and ${kindOf(other)}.`);
  },
});
