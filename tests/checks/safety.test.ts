import { describe, expect, it } from 'vitest';
import { cell, sentence } from './worksheet.js';

describe('DUSTAVERAGE', () => {
  it('counts a shift longer than 8 hours in full', () => {
    expect(cell('DUSTAVERAGE', [0.05, 0.05], [8, 4])).toBeCloseTo(0.075, 12);
  });

  it('refuses more hours than a day has', () => {
    expect(sentence('DUSTAVERAGE', [0.05, 0.05], [12, 12.5])).toBe('#VALUE! Hours must not add up to more than 24 h.');
    expect(cell('DUSTAVERAGE', new Array(240).fill(1), new Array(240).fill(0.1))).toBeCloseTo(3, 9);
  });

  it('counts a concentration of 0 within the shift, and passes over blank pairs at the end', () => {
    expect(cell('DUSTAVERAGE', [0.2, 0, 0.1, null], [2, 4, 2, null])).toBeCloseTo(0.075, 12);
  });

  it('refuses text by name and place', () => {
    expect(sentence('DUSTAVERAGE', [0.2, '<0.01'], [2, 4])).toMatch(/^#VALUE! Concentrations, row 2, is text/);
  });
});

describe('DUSTSUM', () => {
  it('refuses a limit that is blank', () => {
    expect(sentence('DUSTSUM', [0.2, 0.1], [0.5, null])).toMatch(/^#VALUE! Limits, row 2, is blank/);
  });
});
