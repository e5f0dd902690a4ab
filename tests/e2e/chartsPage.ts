import { expect } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import type { openWorkbook } from './workbookPage.js';

export type Workbook = Awaited<ReturnType<typeof openWorkbook>>;

/** The chart of the sheet that a new workbook shows. */
export const TITLE = dosing.charts?.[0]?.title ?? '';
export const chart = ({ page }: Workbook, title = TITLE) => page.locator('.sheet-chart').and(page.getByLabel(title));
export const choice = ({ page }: Workbook) => page.getByLabel('Chart', { exact: true });

/** Waits for the chart, and gives it the keys. */
export async function goToChart(workbook: Workbook, title = TITLE) {
  await expect.poll(() => choice(workbook).locator('option').allTextContents(), { timeout: 30_000 }).toContain(title);
  await chart(workbook, title).waitFor({ state: 'attached', timeout: 30_000 });
  await choice(workbook).selectOption({ label: title });
  await expect.poll(() => chart(workbook, title).evaluate((one) => one === document.activeElement)).toBe(true);
}

/** Where a chart stands on its sheet, in the sheet’s pixels. */
export const box = (workbook: Workbook, title = TITLE) =>
  chart(workbook, title).evaluate(({ style }) =>
    [style.left, style.top, style.width, style.height].map((one) => Number.parseFloat(one)),
  );
