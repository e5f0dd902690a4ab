import { describe, expect, it } from 'vitest';
import { FIGURES } from '../../taskpane/pane/picture/figures/index.js';
import { drawn, exampleSheet, pictureOf, sheetOf } from './drawn.js';

const nothing = sheetOf([]);

describe('the picture of a formula', () => {
  it('is there for every function that the pane promises one for', () => {
    const promised = 'RUNCURVE RUNLENGTH RUNREPORT FEEDCURVE BESTFEED FITRUN LADDERFIT FITLEAF FITCOMPRESSION';
    expect([...FIGURES.keys()].sort()).toEqual(
      [...promised.split(' '), 'SAVING', 'SAVINGSPREAD', 'SENSITIVITY'].sort(),
    );
  });

  it.each([...FIGURES.keys()])(
    'of %s is drawn from the cells that the pane itself writes, in one reading',
    async (id) => {
      const { host, formula } = exampleSheet(id);
      expect(await drawn(formula, host)).toMatchObject({ kind: 'picture', id });
      expect(host.readings).toBe(1);
    },
  );

  it('is found inside other functions, and the outermost of ours comes first', async () => {
    const { host, formula } = exampleSheet('RUNLENGTH');
    expect(await drawn(`=ROUND(${formula.slice(1)},0)&" hL"`, host)).toMatchObject({
      kind: 'picture',
      id: 'RUNLENGTH',
    });
  });

  it('needs no cell at all where everything stands in the formula', async () => {
    const found = await drawn('=POWDER.LADDERFIT({0;20;40;60},{9;5;3;2})', nothing);
    expect(found).toMatchObject({ kind: 'picture', id: 'LADDERFIT' });
    expect(nothing.readings).toBe(0);
  });

  it('takes what our other functions give, with arithmetic between', async () => {
    const fitted = (solids: string) => `=POWDER.FITRUN({0;500;1000},{0.6;1.4;2.2},50,250,2.8,${solids})`;
    const plain = await drawn(fitted('90'), nothing);
    expect(await drawn(fitted('POWDER.CAKESOLIDS(40)+POWDER.CAKESOLIDS(50)'), nothing)).toEqual(plain);
    expect(plain?.kind).toBe('picture');
  });

  it('is no picture where the workbook alone knows an input, and the part is named', async () => {
    const found = await drawn('=POWDER.LADDERFIT(SORT(A1:A4),{9;5;3;2})', sheetOf([[1], [2], [3], [4]]));
    expect(found).toMatchObject({ kind: 'unknown', unknown: { kind: 'function', what: 'SORT' } });
    const local = await drawn('=LET(d,A1:A4,POWDER.LADDERFIT(d,{9;5;3;2}))', nothing);
    expect(local).toMatchObject({ kind: 'unknown', unknown: { what: 'LET' } });
  });

  it('is the sentence of the refusal where an input is refused', async () => {
    const found = await drawn('=POWDER.LADDERFIT({0;20;40;60},{9;5;3;2000})', nothing);
    expect(found).toMatchObject({ kind: 'refused', sentence: expect.stringMatching(/^Hazes, row 4,.* 2000 EBC/) });
  });

  it('is the sentence of the refusal where a rule between inputs is broken', async () => {
    const found = await drawn('=POWDER.LADDERFIT({0;20;20;60},{9;5;3;2})', nothing);
    expect(found).toMatchObject({ kind: 'refused', sentence: expect.stringContaining('repeats row 2') });
  });

  it('is the reason where no answer exists', async () => {
    const found = await drawn('=POWDER.FITRUN({0;500;1000},{3;2;1},50,250,2.8,90)', nothing);
    expect(found).toMatchObject({ kind: 'refused', sentence: expect.stringContaining('does not rise') });
  });

  it('is refused with the worksheet function’s own words for error cells and for a range in a one-cell input', async () => {
    const error = await drawn('=POWDER.LADDERFIT(A1:A4,{9;5;3;2})', sheetOf([[0], ['#DIV/0!'], [40], [60]]));
    expect(error).toMatchObject({ kind: 'refused', sentence: '#DIV/0!' });
    const range = await drawn('=POWDER.FITRUN({0;500;1000},{1;2;3},{50;60},250,2.8,90)', nothing);
    expect(range).toMatchObject({ kind: 'refused', sentence: expect.stringContaining('takes one cell') });
  });

  it.each(['=POWDER.DRYMASS(100,0.65)', '=SUM(A1:A3)', '=POWDER.RUNCURVE(A1:A9,', 'RUNCURVE', ''])(
    'is not there, without a word, for %o',
    async (formula) => {
      expect(await drawn(formula, nothing)).toBeUndefined();
    },
  );

  it('is said in German to a German reader, with a decimal comma', async () => {
    const { summary } = await pictureOf('LADDERFIT', {}, 'de-DE');
    expect(summary).toContain('Die angepasste Trübung fällt von 9\u00a0EBC');
    const { summary: run } = await pictureOf('RUNCURVE', {}, 'de-DE');
    expect(run).toContain('von 0,6\u00a0bar auf 4,037\u00a0bar');
  });
});
