import * as engine from '@univerjs/engine-formula';
import { describe, expect, it } from 'vitest';
import { formulaOf } from '../../../taskpane/workbook/xlsx/readFormula.js';
import { formulaInFile } from '../../../taskpane/workbook/xlsx/writeFormula.js';
import { ORIGINAL } from './originalFunctions.js';

/** Every function that the grid's engine names in one of its lists, or calculates. */
const known = [
  ...Object.entries(engine)
    .filter(([name]) => /^FUNCTION_NAMES_[A-Z]+$/.test(name))
    .flatMap(([, list]) => Object.values(list as Record<string, string>)),
  ...[...engine.ALL_IMPLEMENTED_FUNCTIONS_SET].map(String),
];

/** What no other spreadsheet format has: other names of operators, and functions of the engine's own making. */
const ONLY_HERE = new Set(
  `ARRAY_CONSTRAIN FLATTEN EPOCHTODATE TO_DATE IMCOTH IMLOG IMTANH ISBETWEEN ISDATE ISEMAIL ISURL ROUNDBANK COMPARE CUBE
  DIVIDED MINUS MULTIPLY PLUS AVERAGE.WEIGHTED MARGINOFERROR NUMBERSTRING REGEXMATCH`.split(/\s+/),
);

const called = (name: string) => formulaInFile(`=${name}(A1,2)`);

describe('a function of the grid in a file', () => {
  it('is looked for in every list of the engine', () => {
    expect(new Set(known).size).toBeGreaterThan(500);
    for (const name of ONLY_HERE) expect(known).toContain(name);
  });

  it('stands plain where the format has it from the beginning, and with the mark of younger ones where it has not', () => {
    const twice = new Set(['FILTER', 'SORT']);
    for (const name of known) {
      const mark = ORIGINAL.has(name) || ONLY_HERE.has(name) ? '' : twice.has(name) ? '_xlfn._xlws.' : '_xlfn.';
      expect(called(name)).toBe(`${mark}${name}(A1,2)`);
    }
  });

  it('is read as it was written', () => {
    for (const name of known.filter((one) => one !== 'LAMBDA' && one !== 'LET'))
      expect(formulaOf(called(name), { names: new Map(), knows: () => true })).toEqual({ formula: `=${name}(A1,2)` });
  });

  it.each([
    [
      '=LET(dose,A1,share,dose/2,dose+share)',
      '_xlfn.LET(_xlpm.dose,A1,_xlpm.share,_xlpm.dose/2,_xlpm.dose+_xlpm.share)',
    ],
    ['=LET(x, 1, Price, 2, X+Price+VAT)', '_xlfn.LET(_xlpm.x, 1, _xlpm.Price, 2, _xlpm.X+_xlpm.Price+VAT)'],
    ['=LAMBDA(a,b,a*b)(2,3)', '_xlfn.LAMBDA(_xlpm.a,_xlpm.b,_xlpm.a*_xlpm.b)(2,3)'],
    ['=x+LET(x,SUM({1,2}),x)', 'x+_xlfn.LET(_xlpm.x,SUM({1,2}),_xlpm.x)'],
    ['=LET(f,LAMBDA(y,y+1),f(2))', '_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.y,_xlpm.y+1),_xlpm.f(2))'],
    ['=MAP(A1:A3,LAMBDA(one,one&"one"))', '_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.one,_xlpm.one&"one"))'],
  ])('marks the names that %s declares, and no others', (formula, stored) => {
    expect(formulaInFile(formula)).toBe(stored);
  });
});
