import { mkdirSync } from 'node:fs';
import { chromium, type Page } from 'playwright-core';
import { dosing } from '../../src/sheets/dosing.js';
import { path } from '../paths.js';
import { openSite } from '../site.js';

const FOLDER = path('docs/pictures');

async function selectCell(page: Page, place: string): Promise<void> {
  const box = page.getByLabel('Address or name of the cell');
  await box.fill(place);
  await box.press('Enter');
}

// The pictures of the README, from the built workbook as a person sees it: npm run build, then npm run pictures.
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

await selectCell(page, dosing.names.newFeedRate ?? '');
await page.getByText('Explain POWDER.').first().waitFor();
// The picture is taken of the finished page, with nothing still moving.
await page.waitForTimeout(1000);
await page.screenshot({ path: `${FOLDER}/workbook.png` });

await page.getByRole('tab', { name: 'Check' }).click();
await page.locator('.pb-check .pb-primary').click();
await page.locator('.pb-check [role="status"]:not(:empty)').waitFor();
await page.screenshot({ path: `${FOLDER}/check.png` });
await browser.close();
await site.close();
console.log('Drawn into docs/pictures: workbook.png, check.png');
process.exit(0);
