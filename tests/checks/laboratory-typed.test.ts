import { describe, expect, it } from 'vitest';
import { cell, sentence } from './worksheet.js';

describe('TOUNIT', () => {
  it('reads units typed with spaces to spare, and another µ', () => {
    expect(cell('TOUNIT', 1, '  US   beer  barrel ', 'L')).toBeCloseTo(117.347_765_304, 9);
    expect(cell('TOUNIT', 1, 'mg/m³', 'μg/m³')).toBeCloseTo(1000, 9);
    expect(sentence('TOUNIT', 1, '  bbl ', 'L')).toContain('write US beer barrel or UK barrel');
  });

  it('names the nearest unit and both labels after many slips, which it does not keep', () => {
    for (let slip = 0; slip < 450; slip++) {
      expect(sentence('TOUNIT', 1, `kg${'g'.repeat(slip)}q`, 'kg')).toMatch(/^#VALUE! From must be a unit, but "kg/);
    }
    expect(sentence('TOUNIT', 1, 'kg', 'kgq')).toMatch(/^#VALUE! To must be a unit, .* The nearest is kg\.$/);
    expect(cell('TOUNIT', 1, 'kg', 'g')).toBe(1000);
  });

  it('takes absolute zero itself, and gives the same unit back to the last digit', () => {
    expect(cell('TOUNIT', -273.15, '°C', 'K')).toBeCloseTo(0, 12);
    expect(cell('TOUNIT', -300, 'kg', 'g')).toBe(-300_000);
    for (const same of ['°F', 'psi', 'lb/US beer barrel']) expect(cell('TOUNIT', 0.1, same, same)).toBe(0.1);
  });
});
