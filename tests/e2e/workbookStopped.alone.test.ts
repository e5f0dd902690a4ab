import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { partsOf, rows, words, zipped } from '../workbook/xlsx/handMade.js';
import { gridReady, openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook();
});
afterEach(() => workbook.close());

/** Seventeen thousand million cells, which is seen before they are gone through. */
const VAST = 'SUM(INDIRECT("C1:XFD1048576"))';
/** Ten thousand million products, of which nothing is seen beforehand. */
const ENDLESS = 'SUM(ROW(A1:A100000)*TRANSPOSE(ROW(A1:A100000)))';
/** Longer than the page waits for a sign of life from its calculation. */
const STOPPED = { timeout: 30_000 };

/** How long the page takes to draw once more, in milliseconds. */
async function drawn(): Promise<number> {
  const started = performance.now();
  await workbook.page.evaluate(() => new Promise((resolve) => requestAnimationFrame(resolve)));
  return performance.now() - started;
}

describe('a formula that asks for more cells than are calculated at once', () => {
  it('is named at once; a cell without an answer shows an error, and what reads it follows', async () => {
    await workbook.addSheet();
    await workbook.enter('A1', `=${VAST}`);
    await expect.poll(() => workbook.notice()).toContain(en.workbook.left.tooLarge('Sheet 1!A1'));
    await workbook.enter('B1', '=A1+1');
    await expect.poll(() => workbook.selected()).toContain('#CALC!');
    await workbook.enter('A1', '=41');
    await workbook.go('B1');
    await expect.poll(() => workbook.selected()).toContain('42');
  });
});

describe('a formula that does not come to an end', () => {
  it('leaves the page free where it is typed, is stopped and named; all else is calculated', async () => {
    await workbook.addSheet();
    await workbook.enter('A1', `=${ENDLESS}`);
    let longest = 0;
    await expect
      .poll(async () => {
        longest = Math.max(longest, await drawn());
        return workbook.notice();
      }, STOPPED)
      .toContain(en.workbook.left.formula('Sheet 1!A1'));
    expect(longest).toBeLessThan(2000);
    await expect.poll(() => workbook.selected()).toContain('#CALC!');
    await workbook.enter('B1', '=40+2');
    await expect.poll(() => workbook.selected()).toContain('42');
    // Written over, the cell is calculated again.
    await workbook.enter('A1', '=B1+1');
    await expect.poll(() => workbook.selected()).toContain('43');
  });

  it('keeps the answer that a file has for it, and the workbook before is one question away', async () => {
    await workbook.addSheet();
    await workbook.saved();
    const line = `<c cm="1"><f>${ENDLESS}</f><v>7</v></c><c><f>A1+1</f><v>8</v></c><c><f>2+2</f></c>`;
    const file = zipped(partsOf({ sheets: [rows(line)], names: ['Endless'] }));
    await workbook.page
      .locator('input[type="file"]')
      .setInputFiles({ name: 'endless.xlsx', mimeType: 'application/octet-stream', buffer: Buffer.from(file) });
    const left = workbook.page.waitForEvent('load');
    await workbook.confirm(words.confirm);
    await left;
    await gridReady(workbook.page);
    expect(await drawn()).toBeLessThan(2000);
    await expect.poll(() => workbook.notice(), STOPPED).toContain(en.workbook.left.formula('Endless!A1'));
    for (const [cell, value] of [
      ['A1', '7'],
      ['B1', '8'],
      ['C1', '4'],
    ] as const) {
      await workbook.go(cell);
      await expect.poll(() => workbook.selected()).toContain(`Value${value}`);
    }
    const back = workbook.page.waitForEvent('load');
    await workbook.page.getByRole('button', { name: 'Bring back' }).click();
    await workbook.confirm('Bring back');
    await back;
    await gridReady(workbook.page);
    expect(await workbook.tabs()).toEqual(['Dosing', 'Sheet 1']);
  });
});
