import { describe, expect, it } from 'vitest';
import { catalogue, families } from '../../src/catalogue.js';
import { CAUTIONS } from '../../src/cautions.js';
import { evaluateCells, handOver, isNoAnswer } from '../../src/core/evaluate.js';
import type { Bounds, Input } from '../../src/core/input.js';
import { isRefused } from '../../src/core/read.js';

/** Labels and columns of an answer by key, as the examples name them. */
const boundsOf = (input: Input): readonly (Bounds & { label: string })[] => {
  if (input.kind === 'plan') return Object.values(input.table);
  return 'limit' in input ? [input] : [];
};

describe('the catalogue', () => {
  it('holds every id once, in the form that the host accepts', () => {
    const ids = catalogue.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[A-Z][A-Z0-9]{2,127}$/);
  });

  it('has no id that reads as a cell address', () => {
    for (const { id } of catalogue) expect(id).not.toMatch(/^[A-Z]{1,3}[0-9]+$/);
  });

  it('holds every calculation in exactly one family', () => {
    expect(families.flatMap(({ calculations }) => calculations)).toEqual(catalogue);
  });
});

describe.each(catalogue.map((one) => [one.id, one] as const))('%s as declared', (_, one) => {
  it('gives the answer of its own example', () => {
    const answer = evaluateCells(one, handOver(one.inputs, one.example.given as never));
    if (isRefused(answer) || isNoAnswer(answer)) throw new Error(JSON.stringify(answer));
    const { output } = one;
    const result = one.example.result as never;
    if (output.kind === 'number') expect(answer[0]?.[0]).toBeCloseTo(result, 9);
    else if (output.kind === 'text') expect(answer).toEqual([[result]]);
    else if (output.kind === 'column') expect(answer).toEqual((result as string[]).map((text) => [text]));
    else if (output.kind === 'table') expect(answer.length).toBe((result as { rows: number }).rows + 1);
    else expectFields(output, answer, result);
  });

  it('says what it is for, how it is calculated and where from', () => {
    expect(one.question).toMatch(/\?$/);
    expect(one.summary).toMatch(/\.$/);
    expect(one.method.length).toBeGreaterThan(3);
    expect(one.sources.length).toBeGreaterThan(0);
    for (const caution of one.cautions ?? []) expect(CAUTIONS[caution]).toBeTruthy();
  });

  it('explains every input and orders every range', () => {
    for (const input of Object.values(one.inputs)) {
      expect(input.help.length).toBeGreaterThan(5);
      for (const { limit, usual, source, label } of boundsOf(input)) {
        expect(limit.every(Number.isFinite), label).toBe(true);
        expect(limit[0], label).toBeLessThan(limit[1]);
        expect(source.length, label).toBeGreaterThan(5);
        if (!usual) continue;
        expect(usual[0], label).toBeLessThan(usual[1]);
        expect(usual[0], label).toBeGreaterThanOrEqual(limit[0]);
        expect(usual[1], label).toBeLessThanOrEqual(limit[1]);
      }
    }
  });

  it('has labels that tell its inputs apart, and optional inputs only at the end', () => {
    const inputs = Object.values(one.inputs);
    expect(new Set(inputs.map(({ label }) => label.toLowerCase())).size).toBe(inputs.length);
    const optional = inputs.map((input) => ('preset' in input && input.preset !== undefined) || 'optional' in input);
    expect(optional).toEqual([...optional].sort((a, b) => Number(a) - Number(b)));
  });

  it('has presets that a blank cell cannot change in silence: 0, or 0 refused', () => {
    for (const [key, input] of Object.entries(one.inputs)) {
      if (input.kind !== 'number' || input.preset === undefined || input.preset === 0) continue;
      if (one.id === 'SWAPDOSE' && key === 'position') continue; // there a blank cell is the low end, and its help says so
      expect(input.limit[0], input.label).toBeGreaterThan(0);
    }
  });
});

function expectFields(
  output: Extract<(typeof catalogue)[number]['output'], { kind: 'row' | 'report' }>,
  answer: readonly (readonly unknown[])[],
  result: Readonly<Record<string, number | string>>,
): void {
  const keys = Object.keys(output.fields);
  expect(Object.keys(result).length).toBeGreaterThan(0);
  for (const [key, expected] of Object.entries(result)) {
    const field = output.fields[key];
    expect(keys).toContain(key);
    const cell =
      output.kind === 'row'
        ? answer[0]?.[keys.indexOf(key)]
        : answer.find(([label]) => String(label).startsWith(field?.label as string))?.[1];
    if (typeof expected === 'number')
      expect(Math.abs(Number(cell) / (expected || 1) - (expected ? 1 : 0))).toBeLessThan(1e-9);
    else expect(cell).toBe(expected);
  }
}
