import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { CONVERTIBLE } from '../../src/core/otherUnits.js';
import { call, cell, sentence } from './worksheet.js';

/** The same unit in the notation of a general-purpose unit package. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  hL: '0.1 m3',
  L: 'L',
  mL: 'mL',
  'm³': 'm3',
  'US gal': 'gallon',
  'US fl oz': 'fluidounce',
  'US beer barrel': 'beerbarrel',
  'ft³': 'ft^3',
  kg: 'kg',
  g: 'g',
  t: 'tonne',
  pg: 'pg',
  lb: 'lbm',
  oz: 'oz',
  'g/hL': '10 mg/L',
  'mg/L': 'mg/L',
  'g/L': 'g/L',
  'mg/m³': 'mg/m^3',
  'kg/hL': '10 g/L',
  'lb/US beer barrel': 'lbm/beerbarrel',
  'lb/100 US beer barrels': '0.01 lbm/beerbarrel',
  'oz/US beer barrel': 'oz/beerbarrel',
  'kg/m³': 'kg/m^3',
  'g/cm³': 'g/cm^3',
  'lb/ft³': 'lbm/ft^3',
  'g/m²': 'g/m^2',
  'kg/m²': 'kg/m^2',
  'lb/ft²': 'lbm/ft^2',
  'lb/100 ft²': '0.01 lbm/ft^2',
  'hL/h': '0.1 m^3/hour',
  'L/h': 'L/hour',
  'US gal/min': 'gallon/minute',
  'hL/(m² h)': '0.1 m/hour',
  'm/h': 'm/hour',
  'US gal/(min ft²)': 'gallon/(minute ft^2)',
  'US beer barrel/(ft² h)': 'beerbarrel/(hour ft^2)',
  bar: 'bar',
  mbar: 'mbar',
  Pa: 'Pa',
  kPa: 'kPa',
  MPa: 'MPa',
  atm: 'atm',
  // Not the package's own psi, which is rounded in the eleventh digit.
  psi: 'lbf/inch^2',
  'lbf/ft²': 'lbf/ft^2',
  mPa·s: 'mPa s',
  Pa·s: 'Pa s',
  'lb/(ft s)': 'lbm/(ft s)',
  'm/kg': 'm/kg',
  'ft/lb': 'ft/lbm',
  'cm²': 'cm^2',
  m: 'm',
  cm: 'cm',
  mm: 'mm',
  ft: 'ft',
  in: 'inch',
  s: 's',
  min: 'minute',
  h: 'hour',
  d: 'day',
  kWh: 'kWh',
};

/** The package's own figure for one of our units, in its base units. */
const inBaseUnits = (name: string): number => {
  const written = ELSEWHERE[name] as string;
  return unit(/^\d/.test(written) ? written : `1 ${written}`)
    .toSI()
    .toJSON().value as number;
};

const kindsOf = (name: string): readonly string[] =>
  CONVERTIBLE.filter(([one]) => one === name).map(([, { kind }]) => kind);

const PAIRS = Object.keys(ELSEWHERE).flatMap((from) =>
  Object.keys(ELSEWHERE)
    .filter((to) => to !== from && kindsOf(to).some((kind) => kindsOf(from).includes(kind)))
    .map((to) => [from, to] as const),
);

const value = fc.integer({ min: -1e9, max: 1e9 }).map((one) => one / 1000);

describe('TOUNIT', () => {
  it('agrees with a general-purpose unit package on every pair of units that both know', () => {
    expect(PAIRS.length).toBeGreaterThan(150);
    for (const [from, to] of PAIRS) {
      const ratio = inBaseUnits(from) / inBaseUnits(to);
      expect(Math.abs((cell('TOUNIT', 1, from, to) as number) / ratio - 1), `${from} → ${to}`).toBeLessThan(1e-12);
    }
  });

  it('comes back to the value by the way back, for every pair of units of one kind', () => {
    for (const [from, { kind }] of CONVERTIBLE) {
      for (const [to, other] of CONVERTIBLE) {
        if (other.kind !== kind) continue;
        fc.assert(
          fc.property(value, (given) => {
            fc.pre(kind !== 'temperature' || given > -200);
            const there = cell('TOUNIT', given, from, to) as number;
            const back = cell('TOUNIT', there, to, from) as number;
            const scale = Math.max(Math.abs(given), kind === 'temperature' ? 1000 : 0);
            expect(Math.abs(back - given)).toBeLessThanOrEqual(1e-14 * scale);
          }),
          { seed: 3, numRuns: 5 },
        );
      }
    }
  });

  it.each([
    ['m3', 'hl', 10],
    ['m³', 'HL', 10],
    ['us beer barrel', 'l', 117.347_765_304],
    ['UK Barrel', 'L', 163.659_24],
    ['hL/m2/h', 'm/h', 0.1],
    ['hL/(m2 h)', 'L/(m² h)', 100],
    ['kgf/cm2', 'bar', 0.980_665],
    ['g/m2', 'kg/m^2', 0.001],
    ['Darcy', 'm2', 9.869_232_667_160_13e-13],
    ['BAR', 'kpa', 100],
    ['MPa', 'mbar', 10_000],
    ['mPa.s', 'cP', 1],
    ['ebc', 'fnu', 4],
    ['K', '°C', -272.15],
  ])('reads %s and %s as they are commonly typed', (from, to, expected) => {
    expect(cell('TOUNIT', 1, from, to)).toBeCloseTo(expected, 9);
  });

  it('refuses a plain barrel, and names both', () => {
    for (const plain of ['barrel', 'bbl', 'Barrels', 'lb/bbl', 'lb/100 barrels', 'US barrel', 'lb/barrel']) {
      const message = sentence('TOUNIT', 1, plain, 'L');
      expect(message).toMatch(/^#VALUE! From cannot be/);
      expect(message).toContain('write US beer barrel or UK barrel');
    }
    expect(sentence('TOUNIT', 1, 'L', 'barrel')).toMatch(/^#VALUE! To cannot be "barrel"/);
  });

  it('refuses units of different kinds, and names both kinds', () => {
    expect(sentence('TOUNIT', 1, 'hL', 'bar')).toBe(
      '#VALUE! From and To must be of one kind, but hL measures volume and bar measures pressure.',
    );
    expect(sentence('TOUNIT', 1, 'm²', 'psi')).toContain('m² measures area or permeability');
  });

  it('keeps mega apart from milli', () => {
    expect(sentence('TOUNIT', 1, 'ML', 'L')).toMatch(/^#VALUE! From must be a unit/);
    expect(sentence('TOUNIT', 1, 'MPa·s', 'mPa·s')).toMatch(/^#VALUE! From must be a unit/);
    expect(cell('TOUNIT', 1, 'MPa', 'bar')).toBe(10);
  });

  it('names the nearest unit where it knows none, and says why some cannot be converted', () => {
    expect(sentence('TOUNIT', 1, 'g/hLL', 'mg/L')).toContain('The nearest is g/hL.');
    expect(sentence('TOUNIT', 1, 'ppm', 'mg/L')).toContain('depend on the density of the beer');
    expect(sentence('TOUNIT', 1, 'JTU', 'EBC')).toContain('no defined factor');
    expect(sentence('TOUNIT', 1, 'gallon', 'L')).toContain('write US gal or UK gal');
  });

  it('refuses a temperature below absolute zero', () => {
    expect(sentence('TOUNIT', -300, '°C', 'K')).toBe(
      '#VALUE! Value must be at least -273.15 °C, absolute zero, but -300 was given.',
    );
  });

  it('spreads over a column of values and a row of units, each place with its own answer or sentence', () => {
    expect(cell('TOUNIT', [1, 2], 'bar', 'kPa')).toBe(100);
    const answer = call('TOUNIT', [1, 'x', 3], 'bar', ['kPa', 'L', 'psi']) as unknown[][];
    expect(answer[0]).toEqual([100]);
    expect(answer[1]?.[0]).toMatchObject({ message: expect.stringContaining('Value is text') });
    expect(answer[2]?.[0]).toBeCloseTo(43.511_3, 3);
  });
});
