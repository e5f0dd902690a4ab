import { describe, expect, it } from 'vitest';
import { oneCellCall } from '../../functions/oneCell.js';
import { parametersOf } from '../../functions/parameters.js';
import { catalogue } from '../../src/catalogue.js';
import type { Calculation } from '../../src/core/calculation.js';
import { CellError, call } from './answers.js';

const named = (id: string): Calculation => catalogue.find((one) => one.id === id) as Calculation;
const quickOf = (one: Calculation) => oneCellCall(one, parametersOf(one.inputs));
const quick = (id: string, ...args: readonly unknown[]) => quickOf(named(id))(args);

const takesOneNumberOrWord = ({ inputs, output }: Calculation): boolean =>
  output.kind === 'number' && Object.values(inputs).every(({ kind }) => kind === 'number' || kind === 'choice');
const short = catalogue.filter(takesOneNumberOrWord);
const long = catalogue.filter((one) => !takesOneNumberOrWord(one));

/** The example's cells in their order; those left out are undefined, as a host hands them. */
const exampleOf = ({ inputs, example }: Calculation): readonly unknown[] =>
  Object.keys(inputs).map((key) => (example.given as Record<string, unknown>)[key]);

describe('the short way of a call with single cells', () => {
  it.each(short.map((one) => [one.id, one] as const))('answers the example of %s as the long way does', (id, one) => {
    const args = exampleOf(one);
    // A range of two cells takes the long way.
    const asRanges = args.map((arg, index) => (index === 0 ? [[arg], [arg]] : arg === undefined ? null : [[arg]]));
    const [[first]] = call(id, ...asRanges) as [[unknown]];
    expect(typeof first).toBe('number');
    expect(quickOf(one)(args)).toEqual([[first]]);
    expect(quickOf(one)(args.map((arg) => (arg === undefined ? undefined : [[arg]])))).toEqual([[first]]);
  });

  it.each(long.map((one) => [one.id, one] as const))('leaves %s to the long way', (_, one) => {
    expect(quickOf(one)(exampleOf(one))).toBeUndefined();
    expect(quickOf(one)([])).toBeUndefined();
  });

  it('takes numbers at their limits, and nothing beyond them', () => {
    expect(quick('DRYMASS', 0, 0)).toEqual([[0]]);
    expect(quick('DRYMASS', 100, 0.999)?.[0]?.[0]).toBeCloseTo(0.1, 9);
    expect(quick('DRYMASS', 100, 0.9991)).toBeUndefined();
    expect(quick('DRYMASS', -1, 0.5)).toBeUndefined();
  });

  it.each([
    ['text', '100'],
    ['a blank cell in a range', [[null]]],
    ['nothing, where something is needed', null],
    ['nothing at all', undefined],
    ['a truth value', true],
    ['NaN', Number.NaN],
    ['an error', new CellError('#DIV/0!')],
    ['two cells beside each other', [[100, 200]]],
    ['two cells below each other', [[100], [200]]],
    ['a row that is no range', [100]],
    ['an empty range', [[]]],
    ['no rows', []],
  ])('leaves %s to the long way', (_, argument) => {
    expect(quick('DRYMASS', argument, 0.5)).toBeUndefined();
  });

  it('takes the preset of what is left out', () => {
    expect(quick('SWAPDOSE', 60, 'hydrogel', 'adsorptive')).toEqual([[51]]);
    expect(quick('SWAPDOSE', 60, 'hydrogel', 'adsorptive', null)).toEqual([[51]]);
    expect(quick('SWAPDOSE', 60, 'hydrogel', 'adsorptive', 0)).toEqual([[42]]);
  });

  it('takes a word as it is declared, and leaves any other writing to the long way', () => {
    expect(quick('SWAPDOSE', 60, 'Hydrogel', 'adsorptive')).toBeUndefined();
    expect(quick('SWAPDOSE', 60, null, 'adsorptive')).toBeUndefined();
    expect(call('SWAPDOSE', 60, 'Hydrogel', 'adsorptive')).toEqual([[51]]);
  });

  it('leaves inputs that refuse each other, and cases without an answer, to the long way', () => {
    expect(quick('OVENMOISTURE', 6, 20, 0)).toBeUndefined();
    expect(call('OVENMOISTURE', 6, 20, 0)).toBeInstanceOf(CellError);
  });

  it('answers each call from its own cells alone', () => {
    const dryMass = quickOf(named('DRYMASS'));
    expect(dryMass([100, 0.65])).toEqual([[35]]);
    expect(dryMass([200, 0.5])).toEqual([[100]]);
    expect(dryMass([100, 0.65])).toEqual([[35]]);
  });
});
