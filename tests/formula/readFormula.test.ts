import { describe, expect, it } from 'vitest';
import { readFormula } from '../../taskpane/formula/readFormula.js';

const ids = (text: string) => readFormula(text).ids;
const outermost = (text: string) => readFormula(text).calls.map(({ id }) => id);

describe('our functions in a formula', () => {
  it('are found alone, in any case, and inside other functions', () => {
    expect(ids('=POWDER.RUNLENGTH(A1:A9,B1:B9)')).toEqual(['RUNLENGTH']);
    expect(ids('=powder.runlength(A1:A9,B1:B9)')).toEqual(['RUNLENGTH']);
    expect(ids('=ROUND(POWDER.RUNLENGTH(A1:A9,B1:B9),0)')).toEqual(['RUNLENGTH']);
    expect(ids('=IF(A1>0,1+POWDER.DRYMASS(A1,B1),{1,2})')).toEqual(['DRYMASS']);
  });

  it('are told once each, in their order, and stand inside each other as they do in the formula', () => {
    const text = '=POWDER.DRYPRICE(POWDER.DRYMASS(A1,B1)/POWDER.ASISMASS(1,0),POWDER.DRYMASS(A1,B1))';
    expect(ids(text)).toEqual(['DRYPRICE', 'DRYMASS', 'ASISMASS']);
    expect(outermost(text)).toEqual(['DRYPRICE']);
    expect(readFormula(text).calls[0]?.calls.map(({ id }) => id)).toEqual(['DRYMASS', 'ASISMASS', 'DRYMASS']);
  });

  it('are not found in a text, in a longer name or in another namespace', () => {
    expect(ids('="POWDER.DRYMASS("&A1')).toEqual([]);
    expect(ids('=POWDER.DRYMASSES(A1)')).toEqual([]);
    expect(ids('=MYPOWDER.DRYMASS(A1)')).toEqual([]);
    expect(ids('=OTHER.DRYMASS(A1)')).toEqual([]);
  });

  it('are found under the name that a workbook shows without the add-in', () => {
    expect(outermost('=_xldudf_POWDER_DRYMASS(A1,B1)')).toEqual(['DRYMASS']);
  });

  it.each(['=POWDER.DRYMASS(', '=POWDER.DRYMASS(A1,', '=ROUND(POWDER.DRYMASS(A1,B1', '=POWDER.DRYMASS(A1,"half'])(
    'are told of unfinished text, without a call that could be calculated: %s',
    (text) => {
      expect(ids(text)).toEqual(['DRYMASS']);
      expect(outermost(text)).toEqual([]);
    },
  );

  it.each(['', '=', 'POWDER', '=)', '=((', '5-10', '=A1 B1 +', '={', '=;'])('are none in %o', (text) => {
    expect(readFormula(text)).toEqual({ ids: [], calls: [] });
  });

  it('inside LET and LAMBDA are marked, since a word there may be no name of the workbook', () => {
    const local = (text: string) => readFormula(text).calls.map((one) => one.local);
    expect(local('=LET(dose,60,POWDER.DRYMASS(dose,0))')).toEqual([true]);
    expect(local('=MAP(A1:A3,LAMBDA(m,POWDER.DRYMASS(m,0)))')).toEqual([true]);
    expect(local('=POWDER.DRYMASS(dose,0)')).toEqual([false]);
  });
});

describe('a formula as countries with a decimal comma write it', () => {
  const given = (text: string) =>
    readFormula(text).calls[0]?.node.arguments.map((one) =>
      one?.type === 'Literal' || one?.type === 'ReferenceIdentifier' ? one.value : (one?.type ?? null),
    );

  it('separates inputs by semicolons, with a comma in a number', () => {
    expect(given('=POWDER.SWAPDOSE(60,5;B2;"a;b";0,5)')).toEqual([60.5, 'B2', 'a;b', 0.5]);
    expect(given('=POWDER.CHARGEHOURS(1000;;2)')).toEqual([1000, null, 2]);
  });

  it('keeps the rows of an array', () => {
    const [array] = readFormula('=POWDER.LADDERFIT({0;20,5;40};B1:B3)').calls[0]?.node.arguments ?? [];
    expect(array).toMatchObject({ elements: [[{ value: 0 }], [{ value: 20.5 }], [{ value: 40 }]] });
  });

  it('is told from one with commas by a semicolon outside braces', () => {
    expect(given('=POWDER.LADDERFIT({0;20;40},B1)')).toEqual(['ArrayExpression', 'B1']);
    expect(given('=POWDER.DRYMASS(0,65)')).toEqual([0, 65]);
  });
});
