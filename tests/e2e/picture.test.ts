import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { eachOnOwnSheet, type OpenWorkbook } from './workbookPage.js';

const WIDE = { viewport: { width: 1280, height: 1000 } };

let workbook: OpenWorkbook;
const take = (opened: OpenWorkbook) => {
  workbook = opened;
};

/** Puts the example of a function into the sheet through the pane, and selects its formula. */
async function insert(id: string, formula: string) {
  const { page, go } = workbook;
  await go('A1');
  const back = page.getByRole('button', { name: en.card.back });
  if (await back.isVisible()) await back.click();
  await page.getByRole('searchbox').fill(`POWDER.${id}`);
  await page.getByRole('button', { name: id }).first().click();
  await page.locator('.pb-insertion .pb-primary').click();
  await page.locator('.pb-insertion [role="status"]:not(:empty)').waitFor();
  await go(formula);
  await page.getByRole('figure').waitFor();
}

const drawing = (page: Page) => page.getByRole('figure').getByRole('img');
const words = async (page: Page) => (await page.getByRole('figure').textContent()) ?? '';

describe('the picture of the selected formula', () => {
  eachOnOwnSheet(take, WIDE);

  it('of a plan block that the pane put in shows the run, its limits and what ends it, without a fault', async () => {
    const { page } = workbook;
    await insert('RUNCURVE', 'F2');
    const shown = await words(page);
    for (const text of [
      'limit 4.5\u00a0bar',
      'cake space 6.5\u00a0kg/m²',
      'ends: cake space',
      'Pressure drop (bar)',
      'Run (hL)',
    ]) {
      expect(shown).toContain(text);
    }
    expect(await drawing(page).evaluate((svg) => svg.getBoundingClientRect().height)).toBeGreaterThan(150);
    expect(shown).toContain('2,104\u00a0hL');
    await page.getByText('Figures as a table').click();
    const rows = page.getByRole('region', { name: 'Figures as a table' }).getByRole('row');
    await expect.poll(() => rows.count()).toBeGreaterThan(5);
    expect(await page.getByText('Explain POWDER.RUNCURVE').count()).toBe(1);
  });

  it('follows the inputs of the sheet, and gives way to the sentence of a refusal', async () => {
    const { page } = workbook;
    await insert('LADDERFIT', 'D2');
    await expect.poll(() => words(page)).toContain('from 9\u00a0EBC');
    await workbook.enter('B6', '3.5');
    await workbook.go('D2');
    await expect.poll(() => words(page)).not.toContain('from 9\u00a0EBC');
    await workbook.enter('B6', '-1');
    await workbook.go('D2');
    await expect.poll(() => page.getByRole('figure').count()).toBe(0);
    await expect.poll(() => workbook.selected()).toContain('Hazes, row 3');
  });

  it('is found inside another function, and is not there for a function that has none', async () => {
    const { page } = workbook;
    await workbook.enter('A1', '=ROUND(SUM(POWDER.LADDERFIT({0;20;40;60},{9;5;3;2})),1)');
    await page.getByRole('figure').waitFor();
    await workbook.enter('A2', '=POWDER.DRYMASS(100,0.65)');
    await page.getByText('Explain POWDER.DRYMASS').waitFor();
    await expect.poll(() => page.getByRole('figure').count()).toBe(0);
  });

  it('says what only the workbook can calculate', async () => {
    await workbook.enter('A1', '=POWDER.LADDERFIT({0;20;40;60},{9;5;3;2}*ABS(1))');
    await expect.poll(() => workbook.selected()).toContain('ABS is calculated by the workbook alone');
  });
});

describe('a picture that leaves the pane for the clipboard', () => {
  eachOnOwnSheet(take, { ...WIDE, permissions: ['clipboard-read', 'clipboard-write'] });

  it('is a PNG there', async () => {
    const { page } = workbook;
    await insert('FEEDCURVE', 'F2');
    await page.getByRole('button', { name: 'Copy picture' }).click();
    await page.getByText('The picture is in the clipboard.').waitFor();
    const size = await page.evaluate(async () => {
      const [item] = await navigator.clipboard.read();
      const bitmap = await createImageBitmap((await item?.getType('image/png')) as Blob);
      return [bitmap.width, bitmap.height];
    });
    const drawn = await drawing(page).evaluate((svg) => [svg.clientWidth, svg.clientHeight]);
    expect(size).toEqual(drawn.map((one) => one * 2));
  });

  it('is text there where the browser takes no pictures', async () => {
    const { page } = workbook;
    await insert('FITLEAF', 'E2');
    await page.evaluate(() => {
      navigator.clipboard.write = () => Promise.reject(new Error('refused'));
    });
    await page.getByRole('button', { name: 'Copy picture' }).click();
    await page.getByText('in the clipboard as SVG text').waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/^<svg .*Time per filtrate.*<\/svg>$/s);
  });
});

describe('a picture that leaves the pane for a file', () => {
  eachOnOwnSheet(take, { ...WIDE, colorScheme: 'dark' });

  it.each(['PNG', 'SVG'])('is saved as a %s file in the colours in which it is seen', async (kind) => {
    const { page } = workbook;
    await insert('RUNCURVE', 'F2');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: `Save as ${kind}` }).click(),
    ]);
    expect(download.suggestedFilename()).toBe(`POWDER-RUNCURVE.${kind.toLowerCase()}`);
    const chunks: Buffer[] = [];
    for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
    const bytes = Buffer.concat(chunks);
    if (kind === 'PNG') expect(bytes.subarray(1, 4).toString()).toBe('PNG');
    // The dark ground of the pane, and nothing that only the page's style sheets could settle.
    else expect(bytes.toString()).toMatch(/fill="rgb\(30, 42, 46\)"/);
    if (kind === 'SVG') expect(bytes.toString()).not.toMatch(/var\(|class=/);
  });
});
