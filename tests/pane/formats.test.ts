import { describe, expect, it } from 'vitest';
import { formatsFor } from '../../taskpane/pane/formats.js';

describe('numbers in the pane', () => {
  it('follow the country’s marks and carry their unit', () => {
    expect(formatsFor('en-GB').amount(10_000.5, 'g/hL')).toBe('10,000.5\u00a0g/hL');
    expect(formatsFor('de-DE').amount(10_000.5, 'g/hL')).toBe('10.000,5\u00a0g/hL');
  });

  it('show a share as a percentage', () => {
    expect(formatsFor('en-GB').amount(0.65, 'fraction')).toBe('65%');
  });

  it('show very small and very large numbers by powers of ten', () => {
    expect(formatsFor('en-GB').number(1e-20, 'darcy')).toBe('1E-20');
    expect(formatsFor('en-GB').number(3.3775e9, 'm/kg')).toBe('3.3775E9');
  });

  it('show a sum to its hundredths, however large', () => {
    expect(formatsFor('en-GB').number(12_345_678.9, 'money')).toBe('12,345,678.9');
    expect(formatsFor('de-DE').number(4_999_950_000, '')).toBe('4.999.950.000');
    expect(formatsFor('en-GB').number(2e15, '')).toBe('2E15');
    expect(formatsFor('en-GB').number(1234.567891, '')).toBe('1,234.568');
  });

  it('stand in a field with every digit and without grouping marks', () => {
    const { field } = formatsFor('de-DE');
    expect(field(12_345.678_901, 'kg')).toBe('12345,678901');
    expect(field(0.07, 'fraction')).toBe('7 %');
  });
});
