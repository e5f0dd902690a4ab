import { afterEach, describe, expect, it } from 'vitest';
import { type Calculated, calculateCells } from './headless.js';

let sheet: Calculated;
afterEach(() => sheet.dispose());

describe('a worksheet function in the grid', () => {
  it('answers with the value that its example gives', async () => {
    sheet = await calculateCells([['=POWDER.SWAPDOSE(60,"hydrogel","adsorptive")']]);
    expect(sheet.at('A1').value).toBeCloseTo(51, 9);
  });

  it('takes a range, spills its answer and can stand inside another function', async () => {
    sheet = await calculateCells([[1, '=POWDER.DRYMASS(A1:A3,0.1)', '=SUM(POWDER.DRYMASS(A1:A3,0.1))'], [2], [3]]);
    expect(sheet.at('B1').value).toBeCloseTo(0.9, 9);
    expect(sheet.at('B2').value).toBeCloseTo(1.8, 9);
    expect(sheet.at('B3').value).toBeCloseTo(2.7, 9);
    expect(sheet.at('B3').formula).toBeUndefined();
    expect(sheet.at('C1').value).toBeCloseTo(5.4, 9);
  });

  it('calculates anew when an input changes', async () => {
    sheet = await calculateCells([[100, '=POWDER.DRYMASS(A1,0.65)']]);
    await sheet.enter('A1', 200);
    expect(sheet.at('B1').value).toBeCloseTo(70, 9);
  });

  it('treats text that looks like a date as the text it is', async () => {
    sheet = await calculateCells([['5-10', '=POWDER.DRYMASS(A1,0.65)']]);
    expect(sheet.at('A1').value).toBe('5-10');
    expect(sheet.at('B1')).toMatchObject({ value: '#VALUE!', message: expect.stringContaining('5-10') });
  });

  it('refuses more inputs than it has', async () => {
    sheet = await calculateCells([['=POWDER.DRYMASS(100,0.65,1)']]);
    expect(sheet.at('A1').message).toBe('POWDER.DRYMASS takes 2 inputs at most; 3 are given.');
  });
});

describe('the sentence behind an error', () => {
  const refused = 'Moisture must be';

  it('stands with the cell that was refused', async () => {
    sheet = await calculateCells([['=POWDER.DRYMASS(100,65)', '=A1']]);
    expect(sheet.at('A1')).toMatchObject({ value: '#VALUE!', message: expect.stringContaining(refused) });
    expect(sheet.at('B1').message).toBeUndefined();
  });

  it('stands with the formula that the refused call is a part of', async () => {
    sheet = await calculateCells([['=1+SUM(POWDER.DRYMASS(100,65))']]);
    expect(sheet.at('A1').message).toContain(refused);
  });

  it('stands with the one refused cell of an answer that spilled', async () => {
    sheet = await calculateCells([[1, '=POWDER.DRYMASS(A1:A3,0.1)'], ['much'], [3]]);
    expect(sheet.at('B1').message).toBeUndefined();
    expect(sheet.at('B2')).toMatchObject({ value: '#VALUE!', message: expect.stringContaining('much') });
    expect(sheet.at('B3').value).toBeCloseTo(2.7, 9);
  });

  it('goes when the input is put right, and comes back when it is wrong again', async () => {
    sheet = await calculateCells([[65, '=POWDER.DRYMASS(100,A1)']]);
    expect(sheet.at('B1').message).toContain('65');
    await sheet.enter('A1', 0.65);
    expect(sheet.at('B1')).toMatchObject({ value: 35 });
    expect(sheet.at('B1').message).toBeUndefined();
    await sheet.enter('A1', 70);
    expect(sheet.at('B1').message).toContain('70');
  });

  it('goes when another formula takes the place of the refused one', async () => {
    sheet = await calculateCells([['=POWDER.DRYMASS(100,65)']]);
    await sheet.enter('A1', '=1+"x"');
    expect(sheet.at('A1').value).toBe('#VALUE!');
    expect(sheet.at('A1').message).toBeUndefined();
  });

  it('is not shown where the formula deals with the error itself', async () => {
    sheet = await calculateCells([['=IFERROR(POWDER.DRYMASS(100,65),"none")']]);
    expect(sheet.at('A1')).toEqual({ sheet: 'Sheet 1', address: 'A1', formula: expect.any(String), value: 'none' });
  });
});
