import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook();
  await workbook.addSheet();
});
afterEach(() => workbook.close());

describe('a formula that is typed', () => {
  it.each([30, 90, 200])('is entered as it was typed, at %d ms a key', async (delay) => {
    for (const formula of ['=NPV(0.1,1)', '=SUM(1,2)', '=AVERAGE(3)', '=POWDER.DRYMASS(100,0.5)']) {
      await workbook.go('B2');
      await workbook.page.keyboard.type(formula, { delay });
      await workbook.page.keyboard.press('Enter');
      await workbook.go('B2');
      await expect.poll(workbook.selected).toContain(formula);
    }
  });
});
