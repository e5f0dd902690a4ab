import { afterAll, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { contrasts } from './contrast.js';
import { openWorkbook } from './workbookPage.js';

const opened: Awaited<ReturnType<typeof openWorkbook>>[] = [];
afterAll(async () => {
  for (const one of opened) await one.close();
});

async function open(colorScheme: 'light' | 'dark') {
  const workbook = await openWorkbook({ colorScheme });
  opened.push(workbook);
  await workbook.addSheet();
  // A leading apostrophe says text, as hands know it.
  for (const [address, text] of Object.entries({
    A1: 'beer',
    B1: 'turbidity',
    A2: 'lager',
    B2: "'1,234",
    A3: 'ale',
    B3: "'0,75",
    D1: '=SUM(B2:B3)',
  }))
    await workbook.enter(address, text);
  return workbook;
}

/** Pixels of a cell's upper right corner that stand out from its ground. */
async function cornerPixels(page: Awaited<ReturnType<typeof open>>['page'], right: number, top: number) {
  const box = await page.locator('[id^="univer-sheet-main-canvas"]').boundingBox();
  const clip = { x: (box?.x ?? 0) + right - 10, y: (box?.y ?? 0) + top + 1, width: 9, height: 9 };
  return (await contrasts(page, clip)).filter((one) => one >= 3).length;
}

describe('numbers that stayed text', () => {
  it.each(['light', 'dark'] as const)(
    'have a small corner in their cells that is seen where it is %s',
    async (scheme) => {
      const { page, go } = await open(scheme);
      await go('D5');
      // The second column ends 46 + 2 × 88 pixels from the corner of the cells, the second row begins at 20 + 24.
      await expect.poll(() => cornerPixels(page, 46 + 2 * 88, 20 + 24)).toBeGreaterThan(5);
      expect(await cornerPixels(page, 46 + 2 * 88, 20)).toBe(0);
    },
  );

  it('become numbers by one click beside the selected cell, and texts again by one step back', async () => {
    const { page, go, selected, violations } = await open('light');
    await go('B3');
    await expect.poll(selected).toContain(en.textNumbers.looks);
    expect(await violations()).toEqual([]);
    await page.getByRole('button', { name: en.textNumbers.turn, exact: true }).click();
    await expect.poll(selected).toContain(en.textNumbers.turned('2', 'B2:B3'));
    await expect.poll(selected).not.toContain(en.textNumbers.looks);
    await go('D1');
    await expect.poll(selected).toContain('1.984');
    await page.getByRole('toolbar').getByRole('button', { name: 'Undo' }).click();
    await go('B2');
    await expect.poll(selected).toContain(en.textNumbers.looks);
    await go('B3');
    await expect.poll(selected).toContain('0,75');
  });

  it('are listed by the check, which turns the whole table into numbers', async () => {
    const { page, go, selected, violations } = await open('light');
    await page.getByRole('tab', { name: en.tabs.check }).click();
    await page.getByRole('button', { name: en.check.start }).click();
    const section = page.locator('.pb-findings-text');
    await expect.poll(() => section.textContent()).toContain(en.check.text('2'));
    expect(await violations()).toEqual([]);
    await section.getByRole('button', { name: /^Turn into numbers: .*B2:B3$/ }).click();
    await section.waitFor({ state: 'detached' });
    await expect.poll(() => page.locator('.pb-check').textContent()).toContain(en.textNumbers.shownBy('0,75'));
    await go('B2');
    await expect.poll(selected).toContain('1.234');
  });
});
