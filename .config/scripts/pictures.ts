import { mkdirSync } from 'node:fs';
import { chromium, type Page } from 'playwright-core';
import { path } from '../paths.js';
import { openSite } from '../site.js';

const FOLDER = path('docs/pictures');

async function selectCell(page: Page, address: string): Promise<void> {
  const box = page.getByLabel('Address or name of the cell');
  await box.fill(address);
  await box.press('Enter');
  await page.locator('.pb-selected', { hasText: address }).waitFor();
}

/** Draws the pictures of the README from the built workbook, as a person would see it. */
const site = await openSite();
const browser = await chromium.connect(site.browser.wsEndpoint());
const context = await browser.newContext({
  viewport: { width: 1366, height: 768 },
  locale: 'en-GB',
  colorScheme: 'light',
});
const page = await context.newPage();
mkdirSync(FOLDER, { recursive: true });
await page.goto(`${site.address}/workbook.html`);
await page.locator('html[data-grid="ready"]').waitFor({ state: 'attached' });

await selectCell(page, 'newDose');
await page.locator('.pb-selected').getByRole('heading').first().waitFor();
await page.screenshot({ path: `${FOLDER}/workbook.png` });

await selectCell(page, 'curve');
await page.getByRole('figure').first().waitFor();
await page.screenshot({ path: `${FOLDER}/run.png` });

await page.getByRole('tab', { name: 'Check' }).click();
await page.getByRole('button', { name: /check/i }).first().click();
await page.waitForTimeout(1500);
await page.screenshot({ path: `${FOLDER}/check.png` });
await browser.close();
await site.close();
console.log(`Drawn into docs/pictures: workbook.png, run.png, check.png`);
process.exit(0);
