import type { Page } from 'playwright-core';
import { describe, expect, it, onTestFinished } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { paneInExcel } from './paneInExcel.js';

async function open() {
  const { page, close } = await paneInExcel();
  onTestFinished(close);
  await page.evaluate(() => {
    const sheet = window.book.sheets.get('Sheet1');
    sheet?.contents.set('0,0', '=POWDER.DRYMASS(-100,0.1)');
    sheet?.results.set('0,0', '#VALUE!');
  });
  return page;
}

const edited = (page: Page, editing: boolean) =>
  page.evaluate((now) => {
    window.book.editing = now;
  }, editing);
const refused = (page: Page) => page.getByText(en.host.editing).waitFor();
const sheets = (page: Page) => page.evaluate(() => [...window.book.sheets.keys()]);

describe('a call that Excel refuses', () => {
  it('is told in a sentence where a sheet is inserted, and inserts nothing', async () => {
    const page = await open();
    await edited(page, true);
    await page.getByRole('tab', { name: en.tabs.sheets }).click();
    const insert = page.getByRole('button', { name: en.sheets.insertNamed('Dosing') });
    await insert.click();
    await refused(page);
    expect(await sheets(page)).toEqual(['Sheet1']);
    await edited(page, false);
    await insert.click();
    await page.getByText(en.sheets.done('Dosing')).waitFor();
    expect(await sheets(page)).toEqual(['Sheet1', 'Dosing']);
  });

  it('is told in a sentence where the workbook is checked, and where one of the findings is gone to', async () => {
    const page = await open();
    await page.getByRole('tab', { name: en.tabs.check }).click();
    const start = page.getByRole('button', { name: en.check.start });
    await edited(page, true);
    await start.click();
    await refused(page);
    await edited(page, false);
    await start.click();
    const finding = page.getByRole('button', { name: /^Go to .*A1/ });
    await finding.waitFor();
    expect(await page.getByText(en.host.editing).count()).toBe(0);
    await edited(page, true);
    await finding.click();
    await refused(page);
    await page.getByRole('button', { name: en.check.toSheet }).click();
    await refused(page);
    expect(await finding.isVisible()).toBe(true);
    expect(await sheets(page)).toEqual(['Sheet1']);
  });
});
