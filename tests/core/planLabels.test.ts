import { describe, expect, it } from 'vitest';
import type { PlanTable } from '../../src/core/input.js';
import { labelKey, labelRefusal, nearestLabel } from '../../src/core/planLabels.js';

const label = (name: string, unit: string) => ({
  group: 'Run',
  label: name,
  unit,
  help: '',
  limit: [0, 1],
  source: '',
});
const table = {
  area: label('Filter area', 'm²'),
  density: label('Cake density', 'kg/m³'),
  viscosity: label('Viscosity at filter', 'mPa·s'),
  moisture: label('Moisture', 'fraction'),
  price: label('Aid price', 'money/kg'),
  exponent: label('Compressibility', ''),
} as unknown as PlanTable;

describe('a label of a plan', () => {
  it.each([
    ['Filter area', 'area'],
    ['filter AREA', 'area'],
    ['  Filter   area ', 'area'],
    ['Filter area (m2)', 'area'],
    ['Filter area, m²:', 'area'],
    ['Filter area [m²]', 'area'],
    ['Cake density kg/m3', 'density'],
    ['Viscosity at filter mPa s', 'viscosity'],
    ['Viscosity at filter mPas', 'viscosity'],
    ['Viscosity at filter (mPa·s)', 'viscosity'],
    ['Viscosity at filter mPa*s', 'viscosity'],
    ['Aid price per kg', 'price'],
    ['Moisture', 'moisture'],
  ])('is known however it is typed: %s', (typed, key) => {
    expect(labelKey(table, typed)).toBe(key);
    // The second time it comes out of memory.
    expect(labelKey(table, typed)).toBe(key);
  });

  it.each(['Filterarea', 'Filter', 'Filter area m3', 'Viscosity at filter Pa s', ''])(
    'is no other text: %s',
    (typed) => {
      expect(labelKey(table, typed)).toBeUndefined();
      expect(labelKey(table, typed)).toBeUndefined();
    },
  );

  it('is kept apart from the same text in another table', () => {
    const other = { own: label('Filter area', 'm²') } as unknown as PlanTable;
    expect(labelKey(table, 'Filter area')).toBe('area');
    expect(labelKey(other, 'Filter area')).toBe('own');
  });
});

describe('what is no label', () => {
  it('is refused with the nearest one', () => {
    expect(labelRefusal(table, 'Filtre area')).toBe(
      '"Filtre area" is no label of a plan. The nearest is "Filter area m²".',
    );
    expect(labelRefusal(table, 'Moistur')).toBe('"Moistur" is no label of a plan. The nearest is "Moisture".');
    expect(nearestLabel(table, 'x'.repeat(10_000))).toBeDefined();
  });

  it('is told how to be written where only its unit differs', () => {
    expect(labelRefusal(table, 'Filter area ft2')).toBe(
      '"Filter area ft2" names another unit. Write "Filter area m²", and its value in m².',
    );
    expect(labelRefusal(table, 'Moisture percent')).toBe(
      '"Moisture percent" names another unit. Write "Moisture", and its value as a fraction or a percentage.',
    );
    expect(labelRefusal(table, 'Compressibility bar')).toBe(
      '"Compressibility bar" names another unit. Write "Compressibility", and its value without a unit.',
    );
  });
});
