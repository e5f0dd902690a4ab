import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { de } from '../../taskpane/texts/de.js';
import { openWorkbook } from './workbookPage.js';

describe('the page in German', () => {
  let workbook: Awaited<ReturnType<typeof openWorkbook>>;
  beforeAll(async () => {
    workbook = await openWorkbook({ locale: 'de-DE', permissions: ['clipboard-read', 'clipboard-write'] });
    await workbook.addSheet();
  });
  afterAll(() => workbook.close());

  it('speaks German in its bar, its tabs, its questions and the engine’s own parts', async () => {
    const { page } = workbook;
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
    const { startAfresh, tabs, parts, saving, cancel, grid } = de.workbook;
    await page.getByRole('status').getByText(saving.saved).waitFor();
    await page.getByRole('button', { name: de.save.button }).waitFor();
    await page.getByRole('separator', { name: parts.width }).waitFor();
    await page.getByRole('button', { name: startAfresh.button }).click();
    const question = page.getByRole('dialog', { name: startAfresh.title });
    await question.getByText(startAfresh.text).waitFor();
    await question.getByRole('button', { name: cancel }).click();
    expect(await workbook.tabs()).toEqual(['Dosing', tabs.newName('1')]);
    await page.getByRole('button', { name: tabs.rename }).click();
    await page.getByLabel(tabs.name).fill('Dosing');
    await page.keyboard.press('Enter');
    await expect.poll(() => workbook.notice()).toContain(tabs.notRenamed(tabs.takenName('Dosing')));
    await page.getByRole('button', { name: grid.names }).click();
    await page.getByText('Namen verwalten').waitFor();
    await page.keyboard.press('Escape');
  });

  it('reads 0,65 as it is meant, and 1.200 as twelve hundred', async () => {
    await workbook.enter('A1', '0,65');
    await workbook.enter('A2', '1.200');
    await workbook.enter('A3', '=A1*A2');
    await expect.poll(() => workbook.selected()).toContain('780');
  });

  it('refuses 1.2, keeps what stood there and says what was typed', async () => {
    await workbook.enter('B1', '7');
    await workbook.enter('B1', '1.2');
    await expect.poll(() => workbook.notice()).toContain('In B1 nicht eingetragen: 1.2 ist hier keine Zahl');
    await expect.poll(() => workbook.selected()).toMatch(/7$/);
  });

  it('reads formulas with semicolons and decimal commas, and refuses what can be read in two ways', async () => {
    await workbook.enter('C1', '=POWDER.DRYMASS(100;0,65)');
    await expect.poll(() => workbook.selected()).toMatch(/35/);
    await workbook.enter('C2', '=POWDER.DRYMASS(100,65)');
    await expect
      .poll(() => workbook.notice())
      .toContain('=POWDER.DRYMASS(100,65) — 100,65 lässt sich auf mehr als eine Weise lesen');
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
      .toContain('Als Text eingefügt, da nicht klar ist, welche Zahl gemeint ist: 1.2');
    await workbook.enter('G1', '=E1*F1');
    await expect.poll(() => workbook.selected()).toContain('600');
  });

  it('takes a percentage in a cell shown as one', async () => {
    await workbook.show('Dosing');
    await workbook.enter(dosing.names.presentMoisture as string, '70');
    await expect.poll(() => workbook.selected()).toContain('0,7');
  });
});
