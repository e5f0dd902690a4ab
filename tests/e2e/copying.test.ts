import { afterEach, expect, it } from 'vitest';
import { openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
afterEach(() => workbook.close());

it('copies every digit of a number, also where the cell has room for a few', async () => {
  workbook = await openWorkbook({ permissions: ['clipboard-read', 'clipboard-write'] });
  const { page, addSheet, enter, go } = workbook;
  await addSheet();
  await enter('A1', '1234567890123.25');
  await go('A1');
  await page.keyboard.press('Control+c');
  await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toBe('1234567890123.25');
});
