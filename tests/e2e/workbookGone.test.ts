import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { en } from '../../taskpane/texts/en.js';
import { openWorkbook } from './workbookPage.js';

const { steps, tabs } = en.workbook;

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook();
  await workbook.addSheet();
});
afterEach(() => workbook.close());

const press = (name: string) => workbook.page.getByRole('button', { name, exact: true }).click();
const names = () => expect.poll(workbook.tabs);
const shows = (value: string) => expect.poll(workbook.selected).toContain(value);

async function deleteSheet(sheet: string) {
  await workbook.show(sheet);
  await press(tabs.delete);
  await workbook.confirm(tabs.delete);
}

describe('a sheet that another one reads', () => {
  it('shows as #REF! when it is deleted; undo brings sheet and figures back, redo takes them again', async () => {
    await workbook.enter('A1', '21');
    await workbook.addSheet();
    await workbook.enter('A1', "='Sheet 1'!A1*2");
    await shows('Value42');
    await deleteSheet('Sheet 1');
    for (const _ of ['once', 'again']) {
      await names().toEqual(['Dosing', 'Sheet 2']);
      await workbook.go('A1');
      await shows('Value#REF!');
      await press(steps.back);
      await names().toEqual(['Dosing', 'Sheet 1', 'Sheet 2']);
      await workbook.show('Sheet 2');
      await workbook.go('A1');
      await shows('Value42');
      await press(steps.forth);
    }
  });

  it('comes back with its names where no other one stood before it, by the keys too', async () => {
    const [name, place] = Object.entries(dosing.names)[0] as [string, string];
    const read = [
      ['A1', `=Dosing!${place}*2`],
      ['B1', `=${name}*2`],
    ] as const;
    const values: string[] = [];
    for (const [cell, formula] of read) {
      await workbook.enter(cell, formula);
      await shows('Value');
      values.push(await workbook.selected());
    }
    await deleteSheet('Dosing');
    await names().toEqual(['Sheet 1']);
    for (const [cell] of read) {
      await workbook.go(cell);
      await shows('Value#REF!');
    }
    await workbook.page.keyboard.press('Control+z');
    await names().toEqual(['Dosing', 'Sheet 1']);
    await workbook.show('Sheet 1');
    for (const [index, [cell]] of read.entries()) {
      await workbook.go(cell);
      await expect.poll(workbook.selected).toBe(values[index]);
    }
  });
});
