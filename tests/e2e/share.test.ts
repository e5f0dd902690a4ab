import { describe, expect, it, onTestFinished } from 'vitest';
import { paneInExcel } from './paneInExcel.js';
import { openWorkbook } from './workbookPage.js';

describe('a copy with values', () => {
  it('shows the figures of a sheet without its formulas, and leaves the sheet as it was', async () => {
    const { page, close, addSheet, enter, show, go, selected, tabs } = await openWorkbook();
    onTestFinished(close);
    await addSheet();
    await enter('A1', '=POWDER.DRYMASS({100;200},0.5)');
    const before = await tabs();
    await page.getByRole('tab', { name: 'Sheets' }).click();
    await page.getByRole('button', { name: 'Make a copy with values' }).click();
    await page.getByText(/^The copy stands on the sheet/).waitFor();
    const [copy] = (await tabs()).filter((name) => !before.includes(name));
    expect(copy).toMatch(/ values$/);
    await go('A2');
    await expect.poll(selected).toContain('100');
    await go('A1');
    expect(await selected()).not.toContain('POWDER');
    await expect.poll(selected).toContain('50');
    await show(before.at(-1) ?? '');
    await go('A1');
    await expect.poll(selected).toContain('=POWDER.DRYMASS({100;200},0.5)');
  });

  it('is made in Excel too, and a failure is told in a sentence', async () => {
    const { page, close } = await paneInExcel();
    onTestFinished(close);
    await page.evaluate(() => {
      const sheet = window.book.sheets.get('Sheet1');
      sheet?.contents.set('0,0', '=POWDER.DRYMASS(100,0.5)');
      sheet?.results.set('0,0', 50);
      window.book.editing = true;
    });
    await page.getByRole('tab', { name: 'Sheets' }).click();
    const button = page.getByRole('button', { name: 'Make a copy with values' });
    await button.click();
    await page.getByText('A cell is being edited: finish the entry, then try again.').waitFor();
    await page.evaluate(() => {
      window.book.editing = false;
    });
    await button.click();
    await page.getByText('The copy stands on the sheet Sheet1 values.').waitFor();
    expect(await page.evaluate(() => window.book.sheets.get('Sheet1 values')?.contents.get('0,0'))).toBe(50);
    expect(await page.evaluate(() => window.book.sheets.get('Sheet1')?.contents.get('0,0'))).toContain('POWDER');
  });
});
