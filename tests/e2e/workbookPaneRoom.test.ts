import { expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { openWorkbook } from './workbookPage.js';

it('shows the search and its first three hits at 1366 × 768, with all that explains a cell open', async () => {
  const { page, go, violations, close } = await openWorkbook({ viewport: { width: 1366, height: 768 } });
  await go(dosing.names.newFeedRate as string);
  await page.locator('.pb-explained').first().waitFor();
  for (const one of await page.locator('.pb-above details').all())
    await one.evaluate((details: HTMLDetailsElement) => {
      details.open = true;
    });
  const search = page.getByRole('searchbox');
  const isWhole = (box: { y: number; height: number } | null) => box !== null && box.y > 0 && box.y + box.height <= 768;
  expect(isWhole(await search.boundingBox())).toBe(true);
  await search.fill('how long does my run last');
  const hits = page.locator('.pb-choose');
  await expect.poll(() => hits.count()).toBeGreaterThan(2);
  const boxes = await Promise.all([0, 1, 2].map((index) => hits.nth(index).boundingBox()));
  expect([await search.boundingBox(), ...boxes].map(isWhole)).toEqual([true, true, true, true]);
  // What explains the cell has the more room the less is searched for, and can be scrolled by keys.
  expect((await page.locator('.pb-above').boundingBox())?.height).toBeGreaterThan(150);
  await page.locator('.pb-above').focus();
  await page.keyboard.press('End');
  await expect.poll(() => page.locator('.pb-above').evaluate((one) => one.scrollTop)).toBeGreaterThan(50);
  expect(await violations()).toEqual([]);
  await close();
});
