import { describe, expect, it } from 'vitest';
import {
  ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  IFunctionService,
  NumberValueObject,
  StringValueObject,
} from '../../taskpane/workbook/engine/formula.js';
import { servicesOf } from '../../taskpane/workbook/engine/services.js';
import { correctedFunctions } from '../../taskpane/workbook/formula/natives/corrected.js';
import { engineClass } from '../../taskpane/workbook/formula/natives/engineClass.js';
import { calculateCells } from '../workbook/headless.js';

type Given = number | string | boolean | null | readonly (readonly (number | string | boolean | null)[])[];

interface Fault {
  readonly name: string;
  readonly given: readonly Given[];
  readonly expected: number | string | boolean;
  /** For the operators of comparison. */
  readonly token?: string;
}

// Each correction with what the engine itself gets wrong. Where one of these fails, the engine has been cured of it: then
// the correction can go. Sources: ECMA-376 part 1, 18.17; 28 February from the calendar; one atmosphere is 101325 Pa and a
// pound-force on a square inch 6894.757293168 Pa (NIST SP 811, appendix B).
const faults: readonly Fault[] = [
  { name: 'COMPARE', token: '<>', given: [true, 1], expected: true },
  { name: 'COMPARE', token: '=', given: ['abc', 'a*'], expected: false },
  { name: 'EDATE', given: [45688, 1], expected: 45716 },
  { name: 'EOMONTH', given: [45658, -1.5], expected: 45657 },
  { name: 'ISOWEEKNUM', given: [46022], expected: 1 },
  { name: 'WORKDAY.INTL', given: [[[45658]], 10, 7], expected: 45672 },
  {
    name: 'SUMPRODUCT',
    given: [
      [[1], [2]],
      [[1], [2], [3]],
    ],
    expected: '#VALUE!',
  },
  { name: 'CONVERT', given: [1, 'atm', 'psi'], expected: 101325 / 6894.757293168 },
  { name: 'CONVERT', given: [1, 'eV', 'J'], expected: 1.602176634e-19 },
  { name: 'CONVERT', given: [100, 'F', 'C'], expected: (100 - 32) / 1.8 },
  { name: 'MATCH', given: ['a', [[1, 2, 3]], 1], expected: '#N/A' },
  { name: 'MATCH', given: ['bb', [['a', 'b', 'c']], 1], expected: 2 },
  { name: 'XMATCH', given: ['a', [[1, 2, 3]], -1], expected: '#N/A' },
  { name: 'XLOOKUP', given: ['a', [[1, 2, 3]], [[1, 2, 3]], 'none', -1], expected: 'none' },
  { name: 'CHAR', given: [128], expected: '€' },
  { name: 'CHAR', given: [256], expected: '#VALUE!' },
  { name: 'CODE', given: ['€'], expected: 128 },
  { name: 'SEARCH', given: ['m*n', 'margin'], expected: 1 },
  { name: 'SECOND', given: [0.00001], expected: 1 },
  { name: 'DB', given: [1_000_000, 100_000, 6, 7, 7], expected: 15845.098473848071 },
  { name: 'GAMMA', given: [2.5], expected: 0.75 * Math.sqrt(Math.PI) },
  { name: 'BESSELJ', given: [0, 0], expected: 1 },
  // Y0(1) of Abramowitz and Stegun, table 9.1.
  { name: 'BESSELY', given: [1, 0], expected: 0.088256964215677 },
  // I0(2) of Abramowitz and Stegun, table 9.8: e² × 0.3085083225.
  { name: 'BESSELI', given: [2, 0], expected: 2.279585302336067 },
  { name: 'F.DIST.RT', given: [1, 1, 1], expected: 0.5 },
  { name: 'T.DIST', given: [1, 1, false], expected: 1 / (2 * Math.PI) },
  { name: 'T.DIST.RT', given: [1, 1], expected: 0.25 },
  { name: 'T.DIST.2T', given: [Math.SQRT2, 2], expected: 1 - Math.SQRT1_2 },
];

function object(given: Given): BaseValueObject {
  if (typeof given === 'number') return NumberValueObject.create(given);
  if (typeof given === 'boolean') return BooleanValueObject.create(given);
  if (typeof given === 'string') return StringValueObject.create(given);
  return ArrayValueObject.createByArray(given as never);
}

function answer(made: BaseFunction, { given, token }: Fault): unknown {
  if (token) (made as BaseFunction & { setCompareType(token: string): void }).setCompareType(token);
  const result = made.calculate(...given.map(object)) as BaseValueObject;
  return (result.isArray() ? (result as ArrayValueObject).getFirstCell() : result).getValue();
}

const same = (found: unknown, expected: unknown): boolean =>
  typeof found === 'number' && typeof expected === 'number'
    ? Math.abs(found - expected) <= Math.abs(expected) * 1e-12
    : found === expected;

describe.each(faults.map((fault) => [`${fault.name} of ${JSON.stringify(fault.given)}`, fault] as const))(
  '%s',
  (_, fault) => {
    it('is right in its corrected form', () => {
      const [corrected] = correctedFunctions().find(([, name]) => name === fault.name)!;
      expect(same(answer(new corrected(fault.name), fault), fault.expected)).toBe(true);
    });

    it('is still wrong in the engine itself', () => {
      expect(same(answer(new (engineClass(fault.name))(fault.name), fault), fault.expected)).toBe(false);
    });
  },
);

describe('the comparison of the engine itself', () => {
  it('still takes an error in a cell for a text, and an empty text for 0', async () => {
    const calculated = await calculateCells([['=1/0', 0]]);
    const services = servicesOf(calculated.grid.univer);
    services.get(IFunctionService).registerExecutors(new (engineClass('COMPARE'))('COMPARE'));
    // Wrong is what it keeps of a first comparison for the next one.
    await calculated.enter('A2', '=IFERROR(A1>=10,A1>=11)');
    await calculated.enter('B2', '=IF(B1=1,1,B1="")');
    expect([calculated.at('A2').value, calculated.at('B2').value]).toEqual([true, true]);
    calculated.dispose();
  });
});
