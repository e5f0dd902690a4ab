import { describe, expect, it } from 'vitest';
import { calculateCells } from '../workbook/headless.js';

// What operators do with errors, blanks, texts and booleans: ECMA-376 part 1, 18.17.2.2 and 18.17.3; the order of types
// (numbers, texts, FALSE, TRUE) from there as well. Errors handed on: OpenFormula 1.2, 6.3.

/** What a row of formulas shows, each beside the same two columns of cells. */
async function shown(cells: readonly (readonly (string | number)[])[], formulas: readonly string[]) {
  const calculated = await calculateCells([...cells, ...formulas.map((formula) => [formula])]);
  const values = formulas.map((_, n) => calculated.at(`A${cells.length + n + 1}`).value);
  calculated.dispose();
  return values;
}

const OPERATORS = ['=', '<>', '<', '<=', '>', '>=', '+', '-', '*', '/', '^', '&'];

describe('operators in the embedded workbook', () => {
  it('hand an error on, whichever side it is on and whatever the other side holds', async () => {
    const cells = [['=1/0', '=POWDER.TOUNIT(1,"no unit","kg")', '=NA()', 10, 'text']];
    const formulas = OPERATORS.flatMap((operator) =>
      // A text that is no number is an error of its own in arithmetic.
      ['10', 'TRUE', 'D1', 'Z1', ...('+-*/^'.includes(operator) ? [] : ['"text"', 'E1'])].flatMap((other) =>
        ['A1', 'B1', 'C1'].flatMap((error) => [`=${error}${operator}${other}`, `=${other}${operator}${error}`]),
      ),
    );
    const errors = ['#DIV/0!', '#DIV/0!', '#VALUE!', '#VALUE!', '#N/A', '#N/A'];
    expect(await shown(cells, formulas)).toEqual(formulas.map((_, n) => errors[n % errors.length]));
    expect(await shown(cells, ['=-A1', '=A1%', '=-B1', '=C1%'])).toEqual(['#DIV/0!', '#DIV/0!', '#VALUE!', '#N/A']);
  });

  it('hand the errors of an array on element by element', async () => {
    const cells = [
      [1, 5],
      ['=NA()', 5],
      [20, '=1/0'],
      ['text', 5],
    ];
    for (const [formula, expected] of [
      ['=A1:A4>=10', [false, '#N/A', true, true]],
      ['=10<=A1:A4', [false, '#N/A', true, true]],
      ['=A1:A4<B1:B4', [true, '#N/A', '#DIV/0!', false]],
      ['=A1:A4*2', [2, '#N/A', 40, '#VALUE!']],
      ['=40/A1:A4', [40, '#N/A', 2, '#VALUE!']],
      ['=A1:A4-B1:B4', [-4, '#N/A', '#DIV/0!', '#VALUE!']],
      ['=A1:A4&"x"', ['1x', '#N/A', '20x', 'textx']],
      ['=-A1:A4', [-1, '#N/A', -20, '#VALUE!']],
      ['=A1:A4%', [0.01, '#N/A', 0.2, '#VALUE!']],
    ] as const) {
      const calculated = await calculateCells([...cells, [formula]]);
      expect(
        [5, 6, 7, 8].map((row) => calculated.at(`A${row}`).value),
        formula,
      ).toEqual(expected);
      calculated.dispose();
    }
  });

  it('take a minus before texts and truths, and arrays on either side', async () => {
    const formulas = ['=-TRUE', '=-"3"', '=--"3"', '=2*-"3"', '=1--TRUE', '=-"a"', '=SUM(-"3",1)', '=IF(-FALSE,1,2)'];
    expect(await shown([], formulas)).toEqual([-1, -3, 3, -6, 2, '#VALUE!', -2, 2]);
    // The first of each array is shown beside its formula; the sums are of all.
    expect(await shown([[2, 3]], ['=SUM(A1*{1,2})', '=SUM(A1+{1;2})', '=SUM(-{1,2})', '=SUM(A1^{1,2})'])).toEqual([
      6, 7, -3, 6,
    ]);
    expect(await shown([], ['=1&({"x";"y"})', ''])).toEqual(['1x', '1y']);
    expect(await shown([], ['=SUM({1,2}{3})'])).toEqual(['#VALUE!']);
  });

  it('find an error in a list as what stands there, and average it as itself', async () => {
    const cells = [
      [1, '=1/0'],
      [2, 5],
      ['=NA()', 6],
    ];
    const formulas = [
      ...['=XLOOKUP(1,A1:A2,B1:B2,"none")', '=XLOOKUP(2,A1:A2,B1:B2,"none")', '=XLOOKUP(3,A1:A2,B1:B2,"none")'],
      ...['=AVERAGE(B1:B3)', '=AVERAGE(A1:A3)', '=AVERAGE(A1:A2)', '=MAXIFS(A1:A2,B1:B2,9)', '=MINIFS(A1:A2,B1:B2,5)'],
    ];
    expect(await shown(cells, formulas)).toEqual(['#DIV/0!', 5, 'none', '#DIV/0!', '#N/A', 1.5, 0, 2]);
  });

  it('tell 0 from an empty text, and a blank cell from neither', async () => {
    const formulas = ['=A1=""', '=""=A1', '=A1<>""', '=Z1=""', '=""=Z1', '=Z1=0', '=Z1=FALSE', '=A1=FALSE', '=A1=Z1'];
    expect(await shown([[0]], formulas)).toEqual([false, false, true, true, true, true, true, false, true]);
  });

  it('put numbers before texts and texts before FALSE and TRUE, and know no wildcards', async () => {
    const formulas = [
      '="1"=1',
      '="1">999',
      '=TRUE>"z"',
      '=FALSE<>0',
      '=1<TRUE',
      '="A"="a"',
      '="abc"="a*"',
      '="a?"<>"ab"',
    ];
    expect(await shown([], formulas)).toEqual([false, true, true, true, true, true, false, true]);
  });

  it('find sums of decimals equal to what they stand for', async () => {
    expect(await shown([], ['=0.1+0.2=0.3', '=1/3*3=1', '=0.3<0.1+0.2', '=1<1.0000001'])).toEqual([
      true,
      true,
      false,
      true,
    ]);
  });
});
