import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { fileName } from '../../taskpane/workbook/shell/fileName.js';
import { readOf } from '../workbook/xlsx/handMade.js';
import { openFile, savedFile } from './files.js';
import { openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook();
});
afterEach(() => workbook.close());

async function save(way: keyof typeof en.save.ways = 'formulas', expected = 'Powderbook Sheet 1'): Promise<Buffer> {
  const { name, bytes } = await savedFile(workbook.page, way);
  expect(name).toBe(fileName(expected, new Date()));
  return bytes;
}

/** Opens a saved file in the place of the workbook, and shows its second sheet. */
async function openAgain(file: Buffer) {
  await openFile(workbook.page, 'Powderbook.xlsx', file);
  const [, own = ''] = await workbook.tabs();
  await workbook.show(own);
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
    await expect.poll(() => workbook.notice()).toContain(en.save.saved.formulas);
  });

  it('keeps formulas that were filled down with the keyboard, and they calculate when the file is opened again', async () => {
    const { page } = workbook;
    await workbook.addSheet();
    for (const n of [1, 2, 3, 4, 5, 6]) await workbook.enter(`A${n}`, String(n));
    await workbook.enter('B1', '=A1*2+$A$1');
    for (let n = 1; n < 6; n += 1) await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Control+d');
    await workbook.go('B6');
    await expect.poll(() => workbook.selected()).toContain('13');
    const file = await save();
    const filled = readOf(file).book.sheets[1]?.rows.map((row) => row?.[1]);
    expect(filled).toMatchObject([1, 2, 3, 4, 5, 6].map((n) => ({ formula: `=A${n}*2+$A$1`, value: n * 2 + 1 })));
    await openAgain(file);
    await workbook.enter('A6', '60');
    await workbook.go('B6');
    await expect.poll(() => workbook.selected()).toContain('121');
  });

  it('gives the same workbook when the file is opened again', async () => {
    await workbook.addSheet();
    await workbook.enter('A1', '=POWDER.DRYMASS({100;200},0.65)');
    const file = await save();
    await openAgain(file);
    await workbook.go('A2');
    await expect.poll(() => workbook.selected()).toContain('70');
  });

  it('can hold values in place of our formulas, of the workbook or of the shown sheet', async () => {
    await workbook.addSheet();
    await workbook.enter('A1', '=POWDER.DRYMASS({100;200},0.65)');
    await workbook.enter('B1', '=A1+A2');
    const all = readOf(await save('values', en.save.valuesFile('Powderbook Sheet 1'))).book;
    await expect.poll(() => workbook.notice()).toContain(en.save.saved.values);
    expect(all.sheets.map(({ name }) => name)).toEqual(await workbook.tabs());
    const [first, own] = all.sheets;
    expect(own?.rows).toMatchObject([[{ value: 35 }, { value: 105, formula: '=A1+A2' }], [{ value: 70 }]]);
    expect(own?.rows[0]?.[0]?.formula).toBeUndefined();
    expect(first?.charts?.length).toBe(1);
    const sheet = readOf(await save('sheet', en.save.valuesFile('Sheet 1'))).book;
    expect(sheet.sheets.map(({ name }) => name)).toEqual(['Sheet 1']);
    expect(sheet.sheets[0]?.rows).toMatchObject([[{ value: 35 }, { value: 105 }], [{ value: 70 }]]);
  });

  it('asks what the file should hold in a dialog that everyone can use', async () => {
    await workbook.page.getByRole('button', { name: en.save.button }).click();
    await workbook.page.getByRole('dialog', { name: en.save.title }).waitFor();
    expect(await workbook.violations()).toEqual([]);
  });
});
