import { describe, expect, it } from 'vitest';
import { call } from '../functions/answers.js';
import { planMatrices } from './sheet.js';

const [labels, values] = planMatrices();

describe('PLANCHECK', () => {
  const check = (plan: readonly [unknown, unknown]) => (call('PLANCHECK', ...plan) as string[][]).map(([said]) => said);

  it('stands beside each label, row by row, and skips blank ones', () => {
    const said = check([
      [['Filter area m²'], [null], ['Body feed']],
      [[50], [null], [300]],
    ]);
    expect(said).toEqual(['usual', '', 'unusual: Body feed is usually from 50 to 200 g/hL, and 300 g/hL was given.']);
  });

  it('refuses what the functions refuse, where it stands', () => {
    const said = check([
      [['Filter area'], ['filter area'], ['Cake spase'], ['Beer solids'], ['Body feed'], ['Beer flow psi']],
      [[50], [50], [5], [0], ['90'], [1]],
    ]);
    expect(said[0]).toBe('usual');
    expect(said[1]).toBe('refused: "Filter area" stands twice, in rows 1 and 2.');
    expect(said[2]).toContain('refused: "Cake spase" is no label');
    expect(said[3]).toContain('refused: Beer solids must be');
    expect(said[4]).toContain('refused: Body feed is text, not a number');
    expect(said[5]).toContain('refused: "Beer flow psi" names another unit');
  });

  it('refuses contradictory labels where each stands', () => {
    const said = check([
      [...labels, ['Cake resistance']],
      [...values, [2e11]],
    ]);
    expect(said.filter((one) => one?.startsWith('refused: Give either'))).toHaveLength(4);
  });

  it('finds nothing unusual in the invented plan', () => {
    expect(new Set(check(planMatrices()))).toEqual(new Set(['usual']));
  });

  it('asks where a compressible cake may have got a figure of another fit', () => {
    const asked = (changed: Parameters<typeof planMatrices>[0]) =>
      check(planMatrices(changed)).filter((one) => one?.startsWith('unusual: With a Compressibility'));
    const resisting = {
      aidPermeability: undefined,
      beerSolidsPermeability: undefined,
      stabiliserPermeability: undefined,
      cakeResistance: 1.5e11,
    };
    expect(asked({ compressibility: 0.3, ...resisting })).toEqual([
      expect.stringContaining('Is it that of FITCAKE or FITCOMPRESSION, with the Exponent of the same fit?'),
    ]);
    expect(asked({ compressibility: 0.3 })).toHaveLength(2);
    expect(asked({ compressibility: 0, ...resisting })).toEqual([]);
  });

  it('refuses an empty range, and says so at each of 20,000 wrong labels at once', () => {
    expect(call('PLANCHECK', [], [])).toMatchObject({ code: '#VALUE!', message: 'Labels is an empty range.' });
    const column = Array.from({ length: 20_000 }, () => ['Beer flaw']);
    expect(new Set(check([column, column]))).toEqual(
      new Set(['refused: "Beer flaw" is no label of a plan. The nearest is "Beer flow hL/h".']),
    );
  });

  it('refuses a blank where nothing says what it stands for, and asks about a price or a feed of 0', () => {
    const rows = [['Stabiliser price'], ['Stabiliser dose'], ['Precoat price'], ['Downtime cost'], ['Beer value']];
    const blank = check([rows, rows.map(() => [null])]);
    expect(blank).toEqual([
      'refused: Stabiliser price must be from 0 to 10\u202f000\u202f000 money/kg, but the cell is blank. Type 0 where it is nothing.',
      'refused: Stabiliser dose must be from 0 to 10\u202f000 g/hL, but the cell is blank. Type 0 where it is nothing.',
      'usual',
      expect.stringMatching(/^refused: Downtime cost .* but the cell is blank/),
      expect.stringMatching(/^refused: Beer value .* but the cell is blank/),
    ]);
    expect(check([rows, rows.map(() => [0])])).toEqual([
      'unusual: Stabiliser price is 0 or blank. Is it nothing, or not yet known?',
      'usual',
      'usual',
      'usual',
      'unusual: Beer value is 0 or blank. Is it nothing, or not yet known?',
    ]);
  });
});
