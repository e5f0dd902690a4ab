import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import type { Calculation } from '../../src/core/calculation.js';
import { evaluateCells, handOver } from '../../src/core/evaluate.js';
import { layOut } from '../../taskpane/pane/form/block.js';
import { exampleDraft } from '../../taskpane/pane/form/draft.js';
import { readDraft } from '../../taskpane/pane/form/readDraft.js';
import { settingFor } from '../../taskpane/pane/setting.js';
import { en } from '../../taskpane/texts/en.js';
import { CellError, call } from '../functions/answers.js';
import { inASheet } from './blockCells.js';

const named = (id: string): Calculation => {
  const found = catalogue.find((one) => one.id === id);
  if (!found) throw new Error(`There is no ${id}.`);
  return found;
};
const texts = (id: string, draft = {}) => {
  const { formats, writing } = settingFor(en, 'en-GB', 'embedded');
  const example = { ...exampleDraft(named(id), formats), ...draft };
  return layOut(named(id), readDraft(named(id), example, writing).handed);
};
const plain = (answer: unknown) =>
  JSON.stringify(answer, (_, value) => (value instanceof CellError ? value.message : (value?.none ?? value)));

describe.each(catalogue.map((one) => [one.id, one] as const))('the block of %s', (id, calculation) => {
  // A decimal comma must not change what is written.
  const { formats, writing } = settingFor(en, 'de-DE', 'embedded');
  const read = readDraft(calculation, exampleDraft(calculation, formats), writing);

  it('starts from an example that no field refuses', () => {
    expect(read.problems).toEqual({});
  });

  it('holds a formula whose references give the answer of the example', () => {
    const sheet = inASheet(layOut(calculation, read.handed));
    const answer = plain(call(id, ...sheet.args));
    expect(sheet.id).toBe(id);
    expect(answer).toBe(plain(evaluateCells(calculation, read.handed)));
    const example = evaluateCells(calculation, handOver(calculation.inputs, calculation.example.given as never));
    // A verdict on each row of a plan depends on how many labels are written; every other answer is the example's own.
    if (calculation.output.kind !== 'column') expect(answer).toBe(plain(example));
  });

  it('keeps as many cells free as the answer fills, with nothing else in them', () => {
    const laidOut = layOut(calculation, read.handed);
    const answer = evaluateCells(calculation, read.handed) as readonly (readonly unknown[])[];
    expect([laidOut.rows, laidOut.columns]).toEqual([answer.length, answer[0]?.length]);
    const [top, left] = laidOut.formula;
    const filled = laidOut.block.rows
      .slice(top, top + laidOut.rows)
      .flatMap((row) => row.slice(left, left + laidOut.columns));
    expect(filled).toHaveLength(laidOut.rows * laidOut.columns);
    expect(filled.filter(({ text, number }) => text !== undefined || number !== undefined)).toEqual([]);
  });
});

describe('a block', () => {
  it('writes label, value and unit of each input, presets too, and the formula below', () => {
    const { block } = texts('SWAPDOSE');
    expect(block.rows.map((row) => row.map(({ text, number }) => text ?? number))).toEqual([
      [named('SWAPDOSE').summary, undefined, undefined],
      ['Dose', 60, 'g/hL'],
      ['From kind', 'hydrogel', undefined],
      ['To kind', 'adsorptive', undefined],
      ['Position', 0.5, undefined],
      ['Dose after the swap', undefined, 'g/hL'],
    ]);
    expect(inASheet(texts('SWAPDOSE')).formula).toBe('=POWDER.SWAPDOSE(B2,B3,B4,B5)');
  });

  it('shows shares as percentages, given or calculated', () => {
    expect(texts('DRYMASS').block.rows[2]?.[1]).toMatchObject({ number: 0.65, format: '0.0 %' });
    const { block, formula } = texts('OVENMOISTURE');
    expect(block.rows[formula[0]]?.[formula[1]]?.format).toBe('0.0 %');
  });

  it('shows as many digits of an answer as a person reads, whatever its size', () => {
    const shown = (id: string, draft = {}) => {
      const { block, formula } = texts(id, draft);
      return block.rows.slice(formula[0]).map((row) => row[formula[1]]?.format ?? row[formula[1] + 1]?.format);
    };
    expect(shown('PRECOATMASS')[0]).toBe('#,##0.000');
    expect(shown('PRECOATMASS', { area: '0.002', load: '800' })[0]).toBe('#,##0.0000');
    expect(shown('PRECOATMASS', { area: '10000', load: '2000' })[0]).toBe('#,##0');
    expect(shown('CAKERESISTANCE')[0]).toBe('0.0000E+00');
    expect(shown('TOUNIT')[0]).toBeUndefined();
    // Run, its time, what ends it, end pressure drop, end load, …
    expect(shown('RUNREPORT').slice(0, 5)).toEqual(['#,##0.0', '#,##0.0000', undefined, '#,##0.0000', '#,##0.0000']);
    // Every reading of a curve has the same number of places: those of the largest.
    expect(new Set(shown('RUNCURVE').slice(1, 5))).toEqual(new Set(['#,##0.0']));
  });

  it('knows how wide the labels are that an answer will spill', () => {
    const { block, formula } = texts('RUNREPORT');
    const room = block.rows.slice(formula[0], formula[0] + 4).map((row) => row[formula[1]]?.room);
    expect(room).toEqual(['Run hL', 'Run time h', 'Ends by', 'End pressure drop bar'].map(({ length }) => length));
  });

  it('puts series side by side with room to grow, and the answer where they cannot meet it', () => {
    const laidOut = texts('LADDERFIT');
    expect(laidOut.beside).toBe(true);
    expect(inASheet(laidOut).formula).toBe('=POWDER.LADDERFIT(A4:A17,B4:B17)');
    const grown = texts('LADDERFIT', { doses: '0\n20\n40\n60\n80', hazes: '9\n5\n3\n2\n1.5' });
    expect(inASheet(grown).formula).toBe('=POWDER.LADDERFIT(A4:A18,B4:B18)');
  });

  it('stands the verdicts on a plan beside the rows they judge', () => {
    const { block, formula } = texts('PLANCHECK');
    expect(block.rows[formula[0]]?.[0]?.text).toBe('Filter area');
  });
});
