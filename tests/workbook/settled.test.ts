import { afterEach, describe, expect, it } from 'vitest';
import { type Calculated, calculateCells } from './headless.js';

let sheet: Calculated | undefined;
afterEach(() => sheet?.dispose());

const shows = (...addresses: string[]) => addresses.map((address) => sheet?.at(address).value);

describe('a spilled answer that reads a part of another', () => {
  it('shows what the other shows now, in whatever order they stand', async () => {
    sheet = await calculateCells([[1, '=C3', '=D2:D4+0', '=E2:E5*1', '=F2:F6*1', '=SEQUENCE(6)*A1']]);
    expect(shows('B1', 'C1', 'D1', 'E1', 'F6')).toEqual([6, 4, 3, 2, 6]);
    await sheet.enter('A1', 2);
    expect(shows('B1', 'C1', 'D1', 'E1', 'F6')).toEqual([12, 8, 6, 4, 12]);
    await sheet.enter('A1', 5);
    expect(shows('B1', 'C1', 'D1', 'E1', 'F6')).toEqual([30, 20, 15, 10, 30]);
  });

  it('follows where the other fills more cells, or fewer', async () => {
    sheet = await calculateCells([[3, '=SUM(C1:C9)', '=IF(LEN(D2:D9)>0,D2:D9,0)', '=SEQUENCE(A1)']]);
    expect(shows('B1')).toEqual([5]);
    await sheet.enter('A1', 6);
    expect(shows('B1')).toEqual([20]);
    await sheet.enter('A1', 2);
    expect(shows('B1')).toEqual([2]);
    await sheet.enter('A1', 8);
    expect(shows('B1')).toEqual([35]);
  });

  it('becomes one cell, an error, and several cells again', async () => {
    sheet = await calculateCells([[3, '=SUM(C1:C9)', '=SEQUENCE(D3)', '=SEQUENCE(A1)']]);
    expect(shows('B1', 'C3')).toEqual([6, 3]);
    await sheet.enter('A1', 1);
    expect(shows('C2')).toEqual([null]);
    await sheet.enter('A1', 4);
    expect(shows('B1', 'C3')).toEqual([6, 3]);
    await sheet.enter('C2', 7);
    expect(shows('B1', 'C1')).toEqual(['#SPILL!', '#SPILL!']);
    await sheet.enter('C2', '');
    expect(shows('B1', 'C3')).toEqual([6, 3]);
  });

  it('draws a random number once for all that read it', async () => {
    sheet = await calculateCells([[1, '=C2-D2', '=D1:D3+0', '=RANDARRAY(3)*A1']]);
    expect(shows('B1')).toEqual([0]);
    await sheet.enter('A1', 2);
    expect(shows('B1')).toEqual([0]);
  });

  it('shows an error where it reads itself by way of others, and a figure once it no longer does', async () => {
    sheet = await calculateCells([[1, '=C2+SEQUENCE(3)', '=B2+SEQUENCE(3)*A1', '=B3']]);
    expect(shows('B1', 'C1', 'D1')).toEqual(['#CYCLE!', '#CYCLE!', 0]);
    await sheet.enter('C1', '=SEQUENCE(3)*A1');
    expect(shows('B1', 'B3', 'D1')).toEqual([3, 5, 5]);
    await sheet.enter('A1', 10);
    expect(shows('B1', 'B3', 'D1')).toEqual([21, 23, 23]);
  });

  it('is right at the end of a long chain, each link above the one that it reads', async () => {
    const links = 30;
    const chain = Array.from({ length: links }, (_, link) => [[`=A${2 * link + 4}+SEQUENCE(2)`], []]).flat();
    sheet = await calculateCells([...chain, ['=B1+SEQUENCE(2)']]);
    expect(shows('A2')).toEqual([2 * (links + 1)]);
    await sheet.enter('B1', 5);
    expect(shows('A2')).toEqual([2 * (links + 1) + 5]);
  });
});
