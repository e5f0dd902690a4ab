import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openWorkbook } from './workbookPage.js';

describe('typing with a decimal comma', () => {
  let workbook: Awaited<ReturnType<typeof openWorkbook>>;
  beforeAll(async () => {
    workbook = await openWorkbook({ locale: 'de-DE', permissions: ['clipboard-read', 'clipboard-write'] });
    await workbook.addSheet();
  });
  afterAll(() => workbook.close());

  it('reads 0,65 as it is meant, and 1.200 as twelve hundred', async () => {
    await workbook.enter('A1', '0,65');
    await workbook.enter('A2', '1.200');
    await workbook.enter('A3', '=A1*A2');
    await expect.poll(() => workbook.selected()).toContain('780');
  });

  it('refuses 1.2, keeps what stood there and says what was typed', async () => {
    await workbook.enter('B1', '7');
    await workbook.enter('B1', '1.2');
    await expect.poll(() => workbook.notice()).toContain('Not entered in B1: 1.2 is not a number here');
    await expect.poll(() => workbook.selected()).toMatch(/7$/);
  });

  it('reads formulas with semicolons and decimal commas, and refuses what can be read in two ways', async () => {
    await workbook.enter('C1', '=POWDER.DRYMASS(100;0,65)');
    await expect.poll(() => workbook.selected()).toMatch(/35/);
    await workbook.enter('C2', '=POWDER.DRYMASS(100,65)');
    await expect.poll(() => workbook.notice()).toContain('=POWDER.DRYMASS(100,65) — 100,65 can be read');
    expect(await workbook.selected()).not.toContain('DRYMASS');
  });

  it('gives the same number again when a cell is opened and closed', async () => {
    await workbook.go('A1');
    await workbook.page.keyboard.press('F2');
    await workbook.page.keyboard.press('End');
    await workbook.page.keyboard.type('5');
    await workbook.page.keyboard.press('Enter');
    await workbook.go('A1');
    await expect.poll(() => workbook.selected()).toContain('0,655');
  });

  it('reads pasted cells in the same way', async () => {
    await workbook.page.evaluate(() => navigator.clipboard.writeText('1.200\t0,5\n1.2\tx'));
    await workbook.go('E1');
    await workbook.page.keyboard.press('Control+v');
    await expect
      .poll(() => workbook.notice())
      .toContain('Pasted as text, since it is not clear which number is meant: 1.2');
    await workbook.enter('G1', '=E1*F1');
    await expect.poll(() => workbook.selected()).toContain('600');
  });

  it('takes a percentage in a cell shown as one', async () => {
    await workbook.show('Dosing');
    await workbook.enter('B7', '70');
    await expect.poll(() => workbook.selected()).toContain('0,7');
  });
});
