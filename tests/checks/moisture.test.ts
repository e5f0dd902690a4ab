import { describe, expect, it } from 'vitest';
import { cell, sentence } from './worksheet.js';

describe('OVENMOISTURE', () => {
  it('refuses weights that no dish can have, and says which', () => {
    expect(sentence('OVENMOISTURE', 10, 9, 11)).toBe('#VALUE! Wet sample must weigh more than Tare.');
    expect(sentence('OVENMOISTURE', 10, 10, 10)).toBe('#VALUE! Wet sample must weigh more than Tare.');
    expect(sentence('OVENMOISTURE', 30, 9, 10)).toBe('#VALUE! Dry sample must weigh at least as much as Tare.');
    expect(sentence('OVENMOISTURE', 30, 31, 10)).toBe('#VALUE! Dry sample must not weigh more than Wet sample.');
  });

  it('takes a sample that is all water, and one that is dry', () => {
    expect(cell('OVENMOISTURE', 30, 10, 10)).toBe(1);
    expect(cell('OVENMOISTURE', 30, 30, 10)).toBe(0);
  });
});
