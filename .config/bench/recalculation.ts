import { chromium } from 'playwright-core';
import { openSite } from '../site.js';
import { buildPage } from './page.js';
import type { Row } from './timing.js';

interface Times {
  readonly ours: number;
  readonly native: number;
  readonly oursSpilled: number;
  readonly nativeSpilled: number;
}

/** 10,000 rows by five columns in the grid of the embedded workbook, our functions beside the same arithmetic. */
export async function recalculation(): Promise<Row[]> {
  const site = await openSite(await buildPage('recalculationPage'));
  const browser = await chromium.connect(site.browser.wsEndpoint());
  const page = await browser.newPage();
  await page.goto(`${site.address}/workbook.html`);
  await page.waitForFunction(() => 'times' in globalThis, undefined, { timeout: 300_000 });
  const times = await page.evaluate(() => (globalThis as unknown as { times: Times }).times);
  await browser.close();
  await site.close();
  return [
    {
      title: 'grid, 10,000 rows × 5 recalculated, 50,000 formulas',
      time: times.ours,
      reference: 'the same arithmetic in native formulas',
      referenceTime: times.native,
    },
    {
      title: 'grid, 10,000 rows × 5 recalculated, five spilled formulas',
      time: times.oursSpilled,
      reference: 'the same arithmetic in native formulas, spilled',
      referenceTime: times.nativeSpilled,
    },
  ];
}
