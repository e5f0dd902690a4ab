import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { en } from '../../taskpane/texts/en.js';
import { gridReady } from './workbookPage.js';

/** Saves the workbook in one of the ways on offer, and gives what the browser downloads. */
export async function savedFile(
  page: Page,
  way: keyof typeof en.save.ways = 'formulas',
): Promise<{ name: string; bytes: Buffer }> {
  await page.getByRole('button', { name: en.save.button }).click();
  await page.getByRole('radio', { name: en.save.ways[way].label }).check();
  const confirm = page.getByRole('dialog').getByRole('button', { name: en.save.confirm });
  const [download] = await Promise.all([page.waitForEvent('download'), confirm.click()]);
  // The browser is another process: the file is copied from there.
  const folder = mkdtempSync(join(tmpdir(), 'powderbook-'));
  const file = join(folder, 'saved.xlsx');
  await download.saveAs(file);
  const bytes = readFileSync(file);
  rmSync(folder, { recursive: true });
  return { name: download.suggestedFilename(), bytes };
}

/** Opens a file in the place of the workbook. */
export async function openFile(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  const left = page.waitForEvent('load');
  const buffer = Buffer.from(bytes);
  await page.locator('input[type="file"]').setInputFiles({ name, mimeType: 'application/octet-stream', buffer });
  await page.getByRole('dialog').getByRole('button', { name: en.open.confirm }).click();
  await left;
  await gridReady(page);
}
