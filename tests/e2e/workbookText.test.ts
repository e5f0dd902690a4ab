import type { Page } from 'playwright-core';
import { afterEach, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { LIMITS } from '../../taskpane/workbook/xlsx/limits.js';
import { openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>> | undefined;
afterEach(async () => {
  await workbook?.close();
  workbook = undefined;
});

const { text: words } = en.open;
const LOG = `Zeit;Druck;Trübung;Charge
;bar;EBC;
27.11.2026 08:00:00;0,45 €;0,62;0017
27.11.2026 08:05:00;0,51 €;n.v.;0017
`;
/** As a control system of Western Europe writes it: the sign of the euro is byte 128. */
const western = (text: string) => Buffer.from(text.replaceAll('€', '\u0080'), 'latin1');

async function open(name: string, buffer: Buffer) {
  workbook = await openWorkbook();
  const { page } = workbook;
  await page.locator('input[type="file"]').setInputFiles({ name, mimeType: 'text/csv', buffer });
  return { ...workbook, dialog: page.getByRole('dialog') };
}

/** Lets a file fall onto the page that holds a piece so many times. */
const drop = (page: Page, name: string, piece: string, times = 1) =>
  page.evaluate(
    (file) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([file.piece.repeat(file.times)], file.name));
      window.dispatchEvent(new DragEvent('drop', { dataTransfer, cancelable: true }));
    },
    { name, piece, times },
  );

describe('a text file', () => {
  it('shows what was understood of it, takes changes, and goes onto a new sheet that undo takes back', async () => {
    const { page, dialog, violations, tabs, go, selected, notice } = await open('run log.csv', western(LOG));
    await dialog.getByRole('heading', { name: words.title('run log.csv') }).waitFor();
    const value = (label: string) => dialog.getByLabel(label, { exact: true }).inputValue();
    expect([await value(words.separator), await value(words.decimal), await value(words.encoding)]).toEqual([
      ';',
      ',',
      'windows-1252',
    ]);
    expect(await value(words.headerRows)).toBe('2');
    const table = dialog.getByRole('table');
    expect(await table.textContent()).toContain(words.size(4, 4));
    expect(await table.locator('th').allTextContents()).toEqual([
      expect.stringContaining(words.kinds.moment),
      expect.stringMatching(/^Druck bar.*numbers/),
      expect.stringContaining('Trübung EBC'),
      expect.stringContaining('Charge'),
    ]);
    expect(await violations()).toEqual([]);
    await dialog.getByLabel(words.headerRows).selectOption('1');
    await expect.poll(() => table.locator('th').nth(1).textContent()).toMatch(/^Druck(?! bar)/);
    await dialog.getByLabel(words.headerRows).selectOption('2');
    await expect.poll(() => table.locator('th').nth(1).textContent()).toMatch(/^Druck bar/);
    await dialog.getByLabel(words.kindOf('Trübung EBC')).selectOption('text');
    await expect.poll(() => dialog.getByLabel(words.kindOf('Trübung EBC')).inputValue()).toBe('text');
    await dialog.getByLabel(words.kindOf('Trübung EBC')).selectOption('read');
    await expect.poll(() => dialog.getByLabel(words.kindOf('Trübung EBC')).inputValue()).toBe('read');
    await dialog.getByRole('button', { name: words.confirm }).click();
    await expect.poll(tabs).toContain('run log');
    await expect.poll(notice).toContain(words.done('run log.csv'));
    await go('C3');
    await expect.poll(selected).toContain('0.62');
    await go('B4');
    await expect.poll(selected).toContain('0.51');
    await go('D4');
    await expect.poll(selected).toContain('0017');
    await page.getByRole('toolbar').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(tabs).not.toContain('run log');
  });

  it('is taken by dropping it onto the page, and leaves everything as it was where the answer is no', async () => {
    workbook = await openWorkbook();
    const { page, tabs } = workbook;
    const before = await tabs();
    await drop(page, 'log.txt', 'time\tmass\n08:00\t1.5\n');
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('heading', { name: words.title('log.txt') }).waitFor();
    expect(await dialog.getByLabel(words.separator).inputValue()).toBe('\t');
    await dialog.getByRole('button', { name: en.workbook.cancel }).click();
    await dialog.waitFor({ state: 'detached' });
    expect(await tabs()).toEqual(before);
  });

  it('is refused by a sentence where it is too large, has too many rows, or is no text', async () => {
    workbook = await openWorkbook();
    const { page, notice } = workbook;
    for (const [piece, times, reason] of [
      ['1;', LIMITS.packed / 2 + 1, en.open.packed(20.1, 20)],
      ['1\n', LIMITS.rows + 1, en.open.reach(LIMITS.rows, LIMITS.columns)],
      ['PK\u0003\u0004\u0000\u0000\u0000', 1, en.open.noText],
    ] as const) {
      await drop(page, 'log.csv', piece, times);
      await expect.poll(notice).toContain(en.open.refused('log.csv', reason));
    }
  });
});
