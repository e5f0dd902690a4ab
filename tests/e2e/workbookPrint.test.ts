import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { gridReady, openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeAll(async () => {
  workbook = await openWorkbook();
});
afterAll(() => workbook.close());

/** Sheets of paper in a file as the browser writes it. */
const pages = (file: Buffer) => file.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
const POINT = 96 / 72;

/** What is said above the printed table, once it is asked for again. */
const above = () => {
  window.dispatchEvent(new Event('beforeprint'));
  return [...document.querySelectorAll('.workbook-print > p')].map((line) => line.textContent ?? '');
};

describe('a printed sheet', () => {
  it('says that it was printed before the calculation had ended, and no longer once it has', async () => {
    const { page } = workbook;
    let calculate = () => {};
    const held = new Promise<void>((resolve) => {
      calculate = resolve;
    });
    await page.route('**/workbook.calculation.js', async (route) => {
      await held;
      await route.continue();
    });
    await page.reload();
    await gridReady(page);
    expect(await page.evaluate(above)).toEqual([expect.stringContaining('Dosing'), en.workbook.printedEarly]);
    calculate();
    await expect.poll(() => page.evaluate(above)).toHaveLength(1);
    await page.unroute('**/workbook.calculation.js');
  });

  it.each(['A4', 'Letter'])('fills several pages of %s, and no single one with an empty grid', async (format) => {
    const file = await workbook.page.pdf({ format, preferCSSPageSize: true });
    expect(pages(file)).toBeGreaterThan(1);
    expect(pages(file)).toBeLessThan(13);
  });

  it('has its titles in the head of the table, its parts apart, and no letters below 8 points or beside the paper', async () => {
    const { page } = workbook;
    await expect.poll(() => page.evaluate(above)).toHaveLength(1);
    await page.emulateMedia({ media: 'print' });
    // The long side of Letter, which is the shorter one of the two, without its margins.
    await page.setViewportSize({ width: Math.floor(279.4 * (96 / 25.4) - 24 * (96 / 25.4)), height: 800 });
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    const printed = await page.evaluate(() => {
      const table = document.querySelector('.workbook-print table') as HTMLTableElement;
      const cells = [...table.querySelectorAll('td, th')];
      return {
        title: document.title,
        heads: table.tHead?.rows.length,
        parts: table.tBodies.length,
        smallest: Math.min(...cells.map((cell) => Number.parseFloat(getComputedStyle(cell).fontSize))),
        beside: cells.filter((cell) => cell.scrollWidth > cell.clientWidth + 1).map((cell) => cell.textContent),
        others: [...document.body.children].filter(
          (one) => !one.matches('.workbook-print') && getComputedStyle(one).display !== 'none',
        ).length,
        texts: cells.map((cell) => cell.textContent ?? ''),
      };
    });
    expect(printed.title).toMatch(/^Dosing \d{4}-\d\d-\d\d$/);
    expect(printed.heads).toBe(4);
    expect(printed.parts).toBeGreaterThan(5);
    expect(printed.smallest).toBeGreaterThanOrEqual(8 * POINT);
    expect(printed.beside).toEqual([]);
    expect(printed.others).toBe(0);
    expect(printed.texts).toContain('117');
    expect(printed.texts.filter((text) => text.startsWith('##'))).toEqual([]);
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    expect(await page.locator('.workbook-print').count()).toBe(0);
    await page.emulateMedia({ media: 'screen' });
  });
});
