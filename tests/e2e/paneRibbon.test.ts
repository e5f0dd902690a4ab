import { expect, it, onTestFinished } from 'vitest';
import { starterSheets } from '../../src/sheets/index.js';
import { commandOf } from '../../taskpane/pane/ribbon.js';
import { paneInExcel } from './paneInExcel.js';

async function open() {
  const { page, close } = await paneInExcel();
  onTestFinished(close);
  /** Chooses an entry of the ribbon as Excel does, and waits until the add-in says that it is done. */
  const choose = (command: string) =>
    page.evaluate(async (name) => {
      let done = 0;
      await window.book.commands.get(name)?.({ completed: () => (done += 1) });
      return done;
    }, command);
  const book = () => page.evaluate(() => ({ sheets: [...window.book.sheets.keys()], shown: window.book.paneShown }));
  return { page, choose, book };
}

it('inserts each starter sheet from the ribbon, without showing the pane', async () => {
  const { choose, book } = await open();
  for (const { key } of starterSheets) expect(await choose(commandOf(key))).toBe(1);
  expect(await book()).toEqual({ sheets: ['Sheet1', ...starterSheets.map(({ name }) => name)], shown: false });
});

it('shows the pane with the cause in a sentence where a sheet cannot be inserted from the ribbon', async () => {
  const { page, choose, book } = await open();
  await page.evaluate(() => {
    window.book.editing = true;
  });
  expect(await choose(commandOf('quotes'))).toBe(1);
  expect(await page.getByRole('alert').allTextContents()).toContain(
    'A cell is being edited: finish the entry, then try again.',
  );
  expect((await book()).shown).toBe(true);
  await page.evaluate(() => {
    window.book.editing = false;
  });
  expect(await choose(commandOf('quotes'))).toBe(1);
  expect((await page.getByRole('alert').allTextContents()).join('')).toBe('');
});
