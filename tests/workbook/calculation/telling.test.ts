import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { FromThread, Place } from '../../../taskpane/workbook/calculation/signals.js';
import { Telling } from '../../../taskpane/workbook/calculation/telling.js';

beforeEach(() => void vi.useFakeTimers({ toFake: ['performance'] }));
afterEach(() => void vi.useRealTimers());

const place = (row: number): Place => ['sheet', row, 0];

/** What is told of a calculation with so many formulas, each of which takes a tenth of a millisecond. */
function told(formulas: number, exactly = false): { at: Place | null; about?: boolean }[] {
  const messages: FromThread[] = [];
  const telling = new Telling((message) => messages.push(message));
  telling.exactly = exactly;
  telling.nowhere();
  for (let row = 0; row < formulas; row += 1) {
    telling.at(place(row));
    vi.advanceTimersByTime(0.1);
  }
  return messages as { at: Place | null }[];
}

describe('where a calculation is', () => {
  it('is told before each formula of a short calculation', () => {
    expect(told(999).map(({ at }) => at)).toEqual([null, ...Array.from({ length: 999 }, (_, row) => place(row))]);
    expect(told(999).some(({ about }) => about)).toBe(false);
  });

  it('is told now and then of a long one, from the place on after which something may be left out', () => {
    const long = told(100_000);
    expect(long.length).toBeLessThan(1300);
    expect(long.length).toBeGreaterThan(1100);
    const first = long.findIndex(({ about }) => about);
    expect(long[first]).toEqual({ at: place(999), about: true });
    expect(long.slice(first).every(({ about }) => about)).toBe(true);
  });

  it('is told before each formula where that is asked for', () => {
    expect(told(5000, true)).toHaveLength(5001);
    expect(told(5000, true).some(({ about }) => about)).toBe(false);
  });

  it('is told before each of the first formulas of the next calculation again', () => {
    const messages: FromThread[] = [];
    const telling = new Telling((message) => messages.push(message));
    for (let row = 0; row < 2000; row += 1) telling.at(place(row));
    telling.nowhere();
    telling.at(place(7));
    expect(messages.slice(-2)).toEqual([{ at: null }, { at: place(7), about: false }]);
  });
});
