import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { box, chart, choice, goToChart, type Workbook } from './chartsPage.js';
import { openFile, savedFile } from './files.js';
import { openWorkbook } from './workbookPage.js';

describe('a chart of one’s own', () => {
  let workbook: Workbook;
  beforeAll(async () => {
    workbook = await openWorkbook({ viewport: { width: 1366, height: 768 } });
  });
  afterAll(() => workbook.close());
  const title = 'Pressure, Flow over Hours';

  it('is drawn from a table, with titles and units, beside it, and has the keys', async () => {
    await workbook.addSheet();
    const rows = [
      ['Hours', 'Pressure', 'Flow'],
      ['h', 'bar', 'hL/h'],
      ['0', '0.6', '400'],
      ['1', '1.1', '395'],
      ['2', '1.9', '390'],
    ];
    for (const [row, cells] of rows.entries())
      for (const [column, text] of cells.entries()) await workbook.enter(`${'BCD'[column]}${row + 2}`, text);
    await workbook.go('B3');
    await choice(workbook).selectOption({ label: 'Lines' });
    await expect.poll(() => chart(workbook, title).count(), { timeout: 30_000 }).toBe(1);
    await expect.poll(() => chart(workbook, title).evaluate((one) => one === document.activeElement)).toBe(true);
    const texts = await chart(workbook, title).locator('text').allTextContents();
    expect(texts).toEqual(expect.arrayContaining(['Pressure', 'Flow', 'Hours (h)', 'Pressure, Flow']));
    await expect.poll(() => chart(workbook, title).locator('[class*="pb-curve"][d*="L"]').count()).toBe(2);
    const [left = 0] = await box(workbook, title);
    // Four columns of the usual width stand before it.
    expect(left).toBeGreaterThanOrEqual(4 * 88);
  });

  it('is in the file and comes back from it, and can be deleted', async () => {
    const { bytes } = await savedFile(workbook.page);
    await openFile(workbook.page, 'own.xlsx', bytes);
    await goToChart(workbook, title);
    await expect.poll(() => chart(workbook, title).locator('[class*="pb-curve"][d*="L"]').count()).toBe(2);
    await workbook.page.keyboard.press('Delete');
    await expect.poll(() => chart(workbook, title).count()).toBe(0);
  });

  it('says what it needs where a single column is selected', async () => {
    await workbook.enter('H20', '5');
    await choice(workbook).selectOption({ label: 'Points' });
    await expect.poll(() => workbook.notice()).toContain('A chart needs two columns');
  });
});
