import { describe, expect, it } from 'vitest';
import { runCurve } from '../../src/plan/runCurve.js';
import { Evaluator } from '../../taskpane/formula/evaluate.js';
import { handedBy } from '../../taskpane/formula/handed.js';
import { readFormula } from '../../taskpane/formula/readFormula.js';
import { Unknown } from '../../taskpane/formula/unknown.js';
import type { Cells } from '../../taskpane/host/host.js';
import type { Reference } from '../../taskpane/host/reference.js';
import { CellError } from '../../taskpane/workbook/formula/cellError.js';

const cells: Cells = [
  [60, 'text', '#DIV/0!', true],
  [20, null, '#5 sieve', null],
];

/** A sheet with those cells at A1, and one name. */
const read = (reference: Reference): Cells | undefined => {
  if (reference.kind === 'name') return reference.name === 'dose' ? [[90]] : undefined;
  if (reference.kind !== 'range') return undefined;
  const { top, left, bottom, right } = reference;
  return cells.slice(top, (bottom ?? 1) + 1).map((row) => row.slice(left, (right ?? 3) + 1));
};

/** The value of a part of a formula, as an argument of a function of ours. */
function value(text: string) {
  const argument = readFormula(`=POWDER.DRYMASS(${text},0)`).calls[0]?.node.arguments[0];
  if (argument === undefined) throw new Error(`${text} is no argument.`);
  return new Evaluator('Here', read).value(argument);
}

const code = (text: string) => {
  const matrix = value(text);
  const only = matrix instanceof Unknown ? undefined : matrix?.[0]?.[0];
  return only instanceof CellError ? only.code : only;
};

describe('the value of an argument', () => {
  it.each([
    ['65%', 0.65],
    ['-2^2', 4],
    ['1+2*3', 7],
    ['A1/A2', 3],
    ['dose-A1', 30],
    ['"a"&"b"', 'ab'],
    ['A1&" g"', '60 g'],
    ['TRUE', true],
    ['D1+1', 2],
    ['B2+1', 1],
    ['@A1', 60],
  ])('of %s is %o', (text, expected) => {
    expect(value(text)).toEqual([[expected]]);
  });

  it('is nothing where the place is left empty', () => {
    expect(value('')).toBeNull();
  });

  it('is an array, in its rows and columns', () => {
    expect(value('{1,-2;3,"x"}')).toEqual([
      [1, -2],
      [3, 'x'],
    ]);
  });

  it('combines a column with a row as the worksheet does', () => {
    expect(value('A1:A2*{1,2}')).toEqual([
      [60, 120],
      [20, 40],
    ]);
  });

  it('is #N/A at a place that one of the ranges does not reach', () => {
    expect(value('{1;2;3}+A1:A2')).toMatchObject([[61], [22], [{ code: '#N/A' }]]);
  });

  it.each([
    ['C1+1', '#DIV/0!'],
    ['A1/0', '#DIV/0!'],
    ['B1*2', '#VALUE!'],
    ['#N/A', '#N/A'],
    ['(0-1)^0.5', '#NUM!'],
  ])('of %s is the error %s', (text, expected) => {
    expect(code(text)).toBe(expected);
  });

  it('is a text where it only begins like an error', () => {
    expect(code('C2')).toBe('#5 sieve');
  });

  it('of another call of ours is what that function gives, its refusal included', () => {
    expect(code('POWDER.DRYMASS(100,0.65)')).toBeCloseTo(35, 12);
    expect(code('POWDER.DRYMASS(100,65)')).toBe('#VALUE!');
    expect(code('-POWDER.DRYMASS(A1,50%)')).toBe(-30);
  });

  it.each([
    ['SUM(A1:A2)', 'function', 'SUM'],
    ['POWDER.DRYMASS(NOW(),0)', 'function', 'NOW'],
    ['A1>2', 'operator', '>'],
    ['@A1:A2', 'operator', '@'],
    ['price', 'missing', 'price'],
    ['A1#', 'missing', 'A1#'],
    ["'[b.xlsx]S'!A1", 'reference', "'[b.xlsx]S'!A1"],
  ])('of %s only the workbook knows, and the part is named', (text, kind, what) => {
    expect(value(text)).toEqual(new Unknown(kind as Unknown['kind'], what));
  });
});

describe('the arguments of a call', () => {
  it('become what the library takes: a plan’s columns, and one cell for each other input', () => {
    const given = [[['Body feed'], ['Flow']], [[90], [250]], [[5]]];
    expect(handedBy(runCurve.inputs, given)).toEqual({
      labels: { labels: ['Body feed', 'Flow'], columns: { values: [90, 250] } },
      points: 5,
    });
    expect(handedBy(runCurve.inputs, [[['a']], [[1]], null])).not.toHaveProperty('points');
  });
});
