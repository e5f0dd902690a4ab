import { describe, expect, it } from 'vitest';
import { bind } from '../../functions/bind.js';
import type { Calculation } from '../../src/core/calculation.js';
import { answers, CellError } from './answers.js';

const temperature = (label: string) =>
  ({ kind: 'number', label, unit: '°C', limit: [-10, 150], help: 'A temperature.', source: 'none' }) as const;

/** No function answers in degrees Celsius, the one unit whose nought is not that of SI; one may some day. */
const middling = {
  id: 'MIDDLING',
  title: 'Mean of three temperatures',
  inputs: { a: temperature('First'), b: temperature('Second'), c: temperature('Third') },
  output: { kind: 'number', label: 'Mean', unit: '°C' },
  compute: ({ a, b, c }: Record<string, number>) => {
    const [first = 0, second = 0, third = 0] = [a, b, c];
    return first === second && second === third ? { none: 'All alike.' } : (first + second + third) / 3;
  },
} as unknown as Calculation;

const mean = bind(middling, answers);
const column = (...cells: unknown[]) => cells.map((cell) => [cell]);
const alike = new CellError('#N/A', 'All alike.');

describe('an answer in a unit with a nought of its own', () => {
  it('is right from single cells', () => {
    expect((mean(1, 2, 6) as number[][])[0]?.[0]).toBeCloseTo(3, 9);
    expect(mean(5, 5, 5)).toEqual(alike);
  });

  it('is right from three columns at once, row by row', () => {
    const [first, second, third] = mean(column(1, 5, 10), column(2, 5, 20), column(6, 5, 60)) as unknown[][];
    expect(first?.[0]).toBeCloseTo(3, 9);
    expect(second).toEqual([alike]);
    expect(third?.[0]).toBeCloseTo(30, 9);
  });

  it('is right from a column and a row crossed, with an error in its own place', () => {
    const answer = mean(column(0, 'warm'), [[3, 6]], 0) as unknown[][];
    expect(answer[0]?.[0]).toBeCloseTo(1, 9);
    expect(answer[0]?.[1]).toBeCloseTo(2, 9);
    const cold = new CellError('#VALUE!', 'First is text, not a number: "warm". It must be from -10 to 150 °C.');
    expect(answer[1]).toEqual([cold, cold]);
  });
});
