import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { readOf } from '../workbook/xlsx/handMade.js';
import { gridReady, openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook();
});
afterEach(() => workbook.close());

async function save(): Promise<Buffer> {
  const [download] = await Promise.all([
    workbook.page.waitForEvent('download'),
    workbook.page.getByRole('button', { name: en.save.button }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('Powderbook.xlsx');
  // The browser is another process: the file is copied from there.
  const folder = mkdtempSync(join(tmpdir(), 'powderbook-'));
  const file = join(folder, 'saved.xlsx');
  await download.saveAs(file);
  const bytes = readFileSync(file);
  rmSync(folder, { recursive: true });
  return bytes;
}

describe('saving the workbook as an .xlsx file', () => {
  it('hands over a file with every sheet, its formulas and their answers, and says so', async () => {
    await workbook.addSheet();
    await workbook.enter('A1', '=POWDER.SWAPDOSE(60,"hydrogel","adsorptive")');
    await workbook.enter('A2', "'=1+1");
    const { book } = readOf(await save());
    expect(book.sheets.map(({ name }) => name)).toEqual(await workbook.tabs());
    const [first, own] = book.sheets;
    expect(first?.names.newDose).toMatch(/^[A-Z]+\d+$/);
    expect(own?.rows[0]?.[0]).toMatchObject({ value: 51, formula: '=POWDER.SWAPDOSE(60,"hydrogel","adsorptive")' });
    expect(own?.rows[1]?.[0]).toMatchObject({ value: '=1+1' });
    await expect.poll(() => workbook.notice()).toContain(en.save.saved);
  });

  it('gives the same workbook when the file is opened again', async () => {
    await workbook.addSheet();
    await workbook.enter('A1', '=POWDER.DRYMASS({100;200},0.65)');
    const file = await save();
    const left = workbook.page.waitForEvent('load');
    await workbook.page
      .locator('input[type="file"]')
      .setInputFiles({ name: 'Powderbook.xlsx', mimeType: 'application/octet-stream', buffer: file });
    await workbook.confirm(en.open.confirm);
    await left;
    await gridReady(workbook.page);
    const [, own = ''] = await workbook.tabs();
    await workbook.show(own);
    await workbook.go('A2');
    await expect.poll(() => workbook.selected()).toContain('70');
  });
});
