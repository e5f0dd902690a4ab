import { describe, expect, it } from 'vitest';
import { fitLeaf } from '../../src/cake/fitLeaf.js';
import { catalogue } from '../../src/catalogue.js';
import { calculate } from '../../src/core/calculate.js';
import type { Calculation } from '../../src/core/calculation.js';
import { evaluateCells, handOver } from '../../src/core/evaluate.js';
import { dryMass } from '../../src/moisture/dryMass.js';
import { examplePlan } from '../../src/plan/example.js';
import { runLength } from '../../src/plan/runLength.js';
import { runReport } from '../../src/plan/runReport.js';

/** The figures and texts of a program's answer in the order in which a worksheet shows them. */
function flat(value: unknown): unknown[] {
  if (Array.isArray(value)) return value.flatMap(flat);
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(flat);
  return [value ?? ''];
}

/** The same of the worksheet's cells: without headers, and without the labels of a report. */
function shown({ output }: Calculation, cells: readonly (readonly unknown[])[]): unknown[] {
  if (output.kind === 'report') return cells.map(([, value]) => (typeof value === 'object' ? '' : value));
  return (output.kind === 'table' ? cells.slice(1) : cells).flat();
}

describe('calculate', () => {
  it.each(catalogue.map((one) => [one.id, one] as const))('answers for %s what the worksheet shows', (_, one) => {
    const given = one.example.given as never;
    const cells = evaluateCells(one, handOver(one.inputs, given));
    const answer = flat(calculate(one, given));
    expect(answer.length).toBeGreaterThan(0);
    expect(answer).toEqual(shown(one, cells as readonly (readonly unknown[])[]));
  });

  it('gives a report by its keys, in the units of its labels', () => {
    expect(calculate(runReport, { labels: { values: examplePlan() } })).toMatchObject({
      volume: expect.closeTo(2104.02, 2),
      end: 'cake space',
      load: 6.5,
    });
  });

  it('gives a fitted figure with its standard error, and without one where two points leave no freedom', () => {
    const two = { seconds: [100, 300], litres: [1, 2], area: 0.01, pressure: 1, viscosity: 2, solids: 2 };
    expect(calculate(fitLeaf, two as never)).toMatchObject({
      resistance: { value: expect.any(Number), error: undefined },
    });
  });

  it('refuses with the sentence that the cell would show, and names a label that is no label', () => {
    expect(calculate(dryMass, { mass: 1000, moisture: 65 })).toEqual({
      refused: expect.stringContaining('write 65 %'),
    });
    const values = { ...examplePlan(), 'Filter aera': 50 };
    expect(calculate(runLength, { labels: { values } })).toEqual({ refused: expect.stringContaining('Filter area') });
  });

  it('says why there is no answer', () => {
    const values = examplePlan({ startPressure: 4.5 });
    expect(calculate(runLength, { labels: { values } })).toEqual({ none: expect.stringMatching(/\.$/) });
  });

  it('has no answer where a figure lies beyond all numbers', () => {
    const boundless = { ...dryMass, compute: () => Number.POSITIVE_INFINITY };
    expect(calculate(boundless, { mass: 1, moisture: 0 })).toEqual({ none: expect.stringContaining('Dry mass') });
  });
});
