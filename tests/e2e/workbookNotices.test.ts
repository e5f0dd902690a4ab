import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { partsOf, rows, words, zipped } from '../workbook/xlsx/handMade.js';
import { openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook();
  await workbook.addSheet();
});
afterEach(() => workbook.close());

const { left, tabs, cancel } = en.workbook;
const says = (text: string) => expect.poll(workbook.notice).toContain(text);
const saysNothing = () => expect.poll(workbook.notice).toBe('');

describe('a notice goes when its cause is mended', () => {
  it('of an entry that was not taken: when its cell is written to, not another one', async () => {
    await workbook.enter('A1', '0,65');
    await says('Not entered in A1');
    await workbook.enter('A2', '1');
    await says('Not entered in A1');
    await workbook.enter('A1', '0.65');
    await saysNothing();
  });

  it('of a formula that asks for too many cells: when it is changed, or its sheet is deleted', async () => {
    const vast = '=SUM(INDIRECT("A1:XFD1048576"))';
    await workbook.enter('B1', vast);
    await says(left.tooLarge('Sheet 1!B1'));
    await workbook.enter('B1', '=1+1');
    await saysNothing();
    await workbook.enter('B2', vast);
    await says(left.tooLarge('Sheet 1!B2'));
    await workbook.page.getByRole('button', { name: tabs.delete, exact: true }).click();
    await workbook.confirm(tabs.delete);
    await saysNothing();
  });

  it('of a name that no sheet can have: when the sheet gets another one', async () => {
    const rename = async (name: string) => {
      await workbook.page.getByRole('button', { name: tabs.rename, exact: true }).click();
      await workbook.page.getByLabel(tabs.name).fill(name);
      await workbook.page.keyboard.press('Enter');
    };
    await rename('Dosing');
    await says(tabs.takenName('Dosing'));
    await rename('Feed');
    await saysNothing();
  });

  it('of a file that was refused: when another one is chosen', async () => {
    const choose = (name: string, bytes: Uint8Array) =>
      workbook.page
        .locator('input[type="file"]')
        .setInputFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) });
    await choose('none.xlsx', new Uint8Array());
    await says(words.refused('none.xlsx', words.empty));
    await choose('plan.xlsx', zipped(partsOf({ sheets: [rows('<c><v>1</v></c>')] })));
    await workbook.page.getByRole('dialog', { name: words.title('plan.xlsx') }).waitFor();
    await saysNothing();
    await workbook.confirm(cancel);
  });
});
