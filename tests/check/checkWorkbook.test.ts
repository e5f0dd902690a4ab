import { describe, expect, it } from 'vitest';
import { rangeText } from '../../taskpane/host/address.js';
import type { WorkbookContents } from '../../taskpane/host/workbookContents.js';
import { checkWorkbook } from '../../taskpane/pane/check/checkWorkbook.js';
import type { Finding } from '../../taskpane/pane/check/finding.js';
import { en } from '../../taskpane/texts/en.js';
import { notationOf } from '../../taskpane/workbook/entry/notation.js';
import { workbook } from './workbook.js';

const check = async (contents: WorkbookContents, scope: 'sheet' | 'workbook' = 'workbook') =>
  (await checkWorkbook(contents, { scope })).findings;
const told = ({ kind, place, subject }: Finding) => `${kind} ${place.sheet} ${rangeText(place)} ${subject}`;

describe('the check of a workbook', () => {
  it('finds nothing where every input is usual', async () => {
    const contents = workbook({ Sheet1: [[1000, 0.65, '=POWDER.DRYMASS(A1,moisture)']] });
    expect(await checkWorkbook(contents, { scope: 'workbook' })).toEqual({ findings: [], formulas: 1 });
  });

  it('lists each table in which numbers stand as text once, where it knows how the user writes numbers', async () => {
    const contents = workbook({
      Sheet1: [
        ['beer', '12,5', '3 €'],
        ['ale', 7, 'x'],
        [null, null, null],
        ['=A1', null, '0,5'],
      ],
    });
    const writing = { notation: notationOf('en-GB'), words: en.entry };
    const { findings } = await checkWorkbook(contents, { scope: 'workbook', writing });
    expect(findings.map((one) => `${told(one)} ${one.figures?.value}`)).toEqual([
      'text Sheet1 B1:C1 12,5 2',
      'text Sheet1 C4 0,5 1',
    ]);
    expect(await check(contents)).toEqual([]);
  });

  it('names every cell of a circle, whichever functions it leads through', async () => {
    const contents = workbook({ Sheet1: [['=B1+1', '=A1+1']] }, { '0,0': '#CYCLE!', '0,1': '#CYCLE!' });
    expect((await check(contents)).map(told)).toEqual(['error Sheet1 A1 #CYCLE!', 'error Sheet1 B1 #CYCLE!']);
  });

  it('lists a refused input at its cell, with the sentence that the function itself says', async () => {
    const [only, ...rest] = await check(
      workbook({ Sheet1: [[-5, 0.65, '=POWDER.DRYMASS(A1,B1)']] }, { '0,2': '#VALUE!' }),
    );
    expect(rest).toEqual([]);
    expect(only && told(only)).toBe('refused Sheet1 A1 POWDER.DRYMASS: Mass');
    expect(only?.sentence).toMatch(/^Mass must be from .* but -5 kg was given\.$/);
  });

  it('lists an unusual input, and judges inputs of a call inside another formula too', async () => {
    const contents = workbook({ Sheet1: [[500, '=IF(TRUE,POWDER.BODYFEED(300,A1)*2,0)']] });
    expect((await check(contents)).map(told)).toEqual(['unusual Sheet1 A1 POWDER.BODYFEED: Body feed']);
  });

  it('lists the value of a plan under its own label', async () => {
    const contents = workbook({
      Sheet1: [
        ['Filter area m²', -1, '=POWDER.RUNLENGTH(A1:A2,B1:B2)'],
        ['Beer flow hL/h', 250, null],
      ],
    });
    expect((await check(contents)).map(told)).toContain('refused Sheet1 B1 POWDER.RUNLENGTH: Filter area');
  });

  it('tells of one bad cell once, however many formulas it feeds', async () => {
    const rows = Array.from({ length: 20 }, (_, row) => [row === 0 ? -5 : null, '=POWDER.DRYMASS($A$1,0.1)']);
    expect((await check(workbook({ Sheet1: rows }))).filter(({ kind }) => kind === 'refused')).toHaveLength(1);
  });

  it('lists an error cell with the sentence behind it where no single input is to blame', async () => {
    const contents = workbook({ Sheet1: [['=POWDER.LADDERDOSE({0;20;40;80},{10;6;4;3},0.001)']] }, { '0,0': '#N/A' });
    const error = (await check(contents)).find(({ kind }) => kind === 'error');
    expect(error && told(error)).toBe('error Sheet1 A1 #N/A');
    expect(error?.sentence).toMatch(/\.$/);
  });

  it('lists a misspelt name, and passes over formulas that have nothing to do with us', async () => {
    const contents = workbook({ Sheet1: [['=POWDER.DRYMAS(1,0)', '=1/0']] }, { '0,0': '#NAME?', '0,1': '#DIV/0!' });
    expect((await check(contents)).map(told)).toEqual(['error Sheet1 A1 #NAME?']);
  });

  it('suspects that a moisture of 65 is meant as a percentage, and says how to write it', async () => {
    const [only, ...rest] = await check(
      workbook({ Sheet1: [[100, 65, '=POWDER.DRYMASS(A1,B1)']] }, { '0,2': '#VALUE!' }),
    );
    expect(rest).toEqual([]);
    expect(only && told(only)).toBe('percentage Sheet1 B1 POWDER.DRYMASS: Moisture');
    expect(only?.sentence).toContain('For 65 percent write 65 % or 0.65.');
  });

  it('suspects a figure typed into three formulas and more, and leaves two alone', async () => {
    const rows = (count: number) => Array.from({ length: count }, () => [300, '=POWDER.BODYFEED(A1,90)']);
    expect((await check(workbook({ Sheet1: rows(2) }))).map(told)).toEqual([]);
    const [only] = await check(workbook({ Sheet1: rows(4) }));
    expect(only && told(only)).toBe('constant Sheet1 B1 POWDER.BODYFEED: Body feed');
    expect(only?.figures).toMatchObject({ value: 90, unit: 'g/hL' });
    expect(only?.figures?.places).toHaveLength(3);
  });

  it('suspects two doses of one beer on two sheets, and not those of two beers', async () => {
    const rows = (beer: string, dose: number) => [[beer, dose, '=POWDER.BODYFEED(300,B1)']];
    expect(await check(workbook({ Sheet1: rows('Beer 3', 90), Sheet2: rows('Beer 4', 120) }))).toEqual([]);
    const [only] = await check(workbook({ Sheet1: rows('Beer 3', 90), Sheet2: rows('beer 3', 120) }));
    expect(only && told(only)).toBe('dose Sheet2 B1 Beer 3');
    expect(only?.figures).toMatchObject({ value: 120, other: 90 });
  });

  it('passes over what an IF keeps from being calculated, but not what IFERROR hides', async () => {
    const guarded = workbook({ Sheet1: [[-5, '=IF(A1<0,"",POWDER.DRYMASS(A1,0.5))']] }, { '0,1': '' });
    expect(await check(guarded)).toEqual([]);
    const blank = workbook({ Sheet1: [[0, '=IF(A1=0,"",POWDER.BODYFEED(300,A1))']] }, { '0,1': '' });
    expect(await check(blank)).toEqual([]);
    const unusual = workbook({ Sheet1: [[900, '=IF(A1=0,"",POWDER.BODYFEED(300,A1))']] }, { '0,1': 270 });
    expect((await check(unusual)).map(told)).toEqual(['unusual Sheet1 A1 POWDER.BODYFEED: Body feed']);
    const masked = workbook({ Sheet1: [[-5, '=IFERROR(POWDER.DRYMASS(A1,0.5),0)']] }, { '0,1': 0 });
    expect((await check(masked)).map(told)).toEqual(['refused Sheet1 A1 POWDER.DRYMASS: Mass']);
  });

  it('looks in a column only at the rows whose answer is an error', async () => {
    const contents = workbook({
      Sheet1: [
        [100, '=IF(A1:A3=-5,"",POWDER.DRYMASS(A1:A3,0.5))'],
        [-5, null],
        [-6, null],
      ],
    });
    const [sheet] = contents.sheets;
    const values = [
      [100, 50],
      [-5, ''],
      [-6, '#VALUE!'],
    ];
    const spilled = { ...contents, sheets: [{ ...sheet, values }] } as typeof contents;
    expect((await check(spilled)).map(told)).toEqual(['refused Sheet1 A3 POWDER.DRYMASS: Mass']);
  });

  it('looks at the shown sheet alone when asked to', async () => {
    const bad = [[-5, '=POWDER.DRYMASS(A1,0.1)']];
    expect((await check(workbook({ Sheet1: bad, Sheet2: bad }), 'sheet')).map(({ place }) => place.sheet)).toEqual([
      'Sheet1',
    ]);
  });

  it('stops when it is cancelled', async () => {
    const rows = Array.from({ length: 20_000 }, (_, row) => [row, `=POWDER.DRYMASS(A${row + 1},0.1)`]);
    const stop = new AbortController();
    const checking = checkWorkbook(workbook({ Sheet1: rows }), {
      scope: 'sheet',
      signal: stop.signal,
      onProgress: () => stop.abort(),
    });
    await expect(checking).rejects.toSatisfy((reason) => reason === stop.signal.reason);
  });
});
