import { describe, expect, it } from 'vitest';
import { parametersOf } from '../../functions/parameters.js';
import { catalogue } from '../../src/catalogue.js';
import type { Calculation } from '../../src/core/calculation.js';
import { evaluateCells, handOver, isNoAnswer } from '../../src/core/evaluate.js';
import type { PlanCells } from '../../src/core/input.js';
import { startRuntime } from './runtime.js';

const host = startRuntime();

/** The declared example as worksheet arguments: a series is a column, a plan its labels and its columns. */
function argumentsOf({ inputs, example }: Calculation): unknown[] {
  const handed = handOver(inputs, example.given as never);
  const column = (cells: readonly unknown[]) => cells.map((cell) => [cell]);
  return parametersOf(inputs).map(({ key, input, column: name }) => {
    const value = handed[key];
    if (input.kind === 'plan') {
      const { labels, columns } = value as PlanCells;
      return column(name === undefined ? labels : (columns[name] ?? []));
    }
    return Array.isArray(value) ? column(value) : value;
  });
}

describe('the built functions, called as the host calls them', () => {
  it('are all associated, and told in functions.json in the order of the catalogue', () => {
    expect(host.associated).toEqual(catalogue.map(({ id }) => id));
    expect(host.metadata.functions.map(({ id }) => id)).toEqual(host.associated);
  });

  it('take every input as a matrix of anything, with error cells and formatted numbers allowed', () => {
    expect(host.metadata.allowErrorForDataTypeAny).toBe(true);
    expect(host.metadata.allowCustomDataForDataTypeAny).toBe(true);
    for (const { parameters, result } of host.metadata.functions) {
      for (const one of [...parameters, result]) expect(one).toMatchObject({ type: 'any', dimensionality: 'matrix' });
    }
  });

  it('have parameter names that are told apart, and help links of their own', () => {
    for (const { parameters, helpUrl, id } of host.metadata.functions) {
      expect(new Set(parameters.map(({ name }) => name)).size, id).toBe(parameters.length);
      expect(helpUrl).toMatch(/^https:\/\/\S+\/functions\.html#/);
    }
  });

  it.each(catalogue.map((one) => [one.id, one] as const))('%s answers its declared example', async (id, one) => {
    const direct = evaluateCells(one, handOver(one.inputs, one.example.given as never));
    const expected = (direct as readonly (readonly unknown[])[]).map((row) =>
      row.map((cell) => (isNoAnswer(cell) ? { error: '#N/A', message: cell.none } : cell)),
    );
    expect((await host.call(id, ...argumentsOf(one))).cells).toEqual(expected);
  });

  it('answer a swap of 60 g/hL hydrogel with 51 g/hL of the adsorptive kind', async () => {
    expect((await host.call('SWAPDOSE', 60, 'hydrogel', 'adsorptive')).cells).toEqual([[51]]);
  });

  it('are found whatever case their name is written in', async () => {
    expect((await host.call('swapdose', 60, 'hydrogel', 'adsorptive')).cells).toEqual([[51]]);
  });

  it('refuse with #VALUE! and a sentence, which the runtime hands on', async () => {
    expect((await host.call('DRYMASS', 100, 65)).cells).toEqual([
      [{ error: '#VALUE!', message: expect.stringContaining('For 65 percent write 65 % or 0.65.') }],
    ]);
  });

  it('read a number that carries a format, and refuse what is no number with a sentence', async () => {
    const formatted = { type: 'FormattedNumber', basicType: 'Double', basicValue: 0.5, numberFormat: '0%' };
    expect((await host.call('DRYMASS', 100, formatted)).cells).toEqual([[50]]);
    const entity = { type: 'Entity', basicType: 'Error', basicValue: '#VALUE!', text: 'Powder', properties: {} };
    expect((await host.call('DRYMASS', 100, entity)).cells).toEqual([
      [{ error: '#VALUE!', message: expect.stringMatching(/\.$/) }],
    ]);
  });

  it.each([
    ['with a type of its own', { type: 'Error', basicType: 'Error', basicValue: '#DIV/0!', errorType: 'Div0' }],
    ['of the older form', { type: 'CustomFunctionError', code: '#DIV/0!' }],
  ])('spill over a column that holds numbers, blanks, text and an error cell %s', async (_, error) => {
    const { cells } = await host.call('DRYMASS', [[100], [null], [0], [''], ['1.200'], [error]], 0.5);
    expect(cells).toEqual([
      [50],
      [0],
      [0],
      [0],
      [{ error: '#VALUE!', message: expect.stringContaining('Mass is text') }],
      [{ error: '#DIV/0!', message: undefined }],
    ]);
  });

  it('answer a column of 100,000 rows in one go', async () => {
    const column = Array.from({ length: 100_000 }, (_, row) => [row]);
    const { cells } = await host.call('DRYMASS', column, 0.5);
    expect(cells).toHaveLength(100_000);
    expect(cells.at(-1)).toEqual([99_999 / 2]);
  });
});

describe('the runtime in these tests', () => {
  it('is the platform’s own: it knows no function that was not associated', async () => {
    await expect(host.call('NOSUCH')).rejects.toThrow('The runtime answers NOSUCH with its error');
  });
});
