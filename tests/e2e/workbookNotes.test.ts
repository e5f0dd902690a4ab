import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { de } from '../../taskpane/texts/de.js';
import { en } from '../../taskpane/texts/en.js';
import { contrasts } from './contrast.js';
import { openFile, savedFile } from './files.js';
import { gridReady, type OpenWorkbook, openWorkbook } from './workbookPage.js';

const words = en.workbook.note;
const TEXT = 'Sampled before the buffer tank.';

/** Pixels in the lower right corner of B2 that stand out from its ground. */
async function cornerPixels(page: OpenWorkbook['page']) {
  const box = await page.locator('[id^="univer-sheet-main-canvas"]').boundingBox();
  // The second column ends 46 + 2 × 88 pixels from the corner of the cells, the second row at 20 + 2 × 24.
  const clip = { x: (box?.x ?? 0) + 46 + 2 * 88 - 10, y: (box?.y ?? 0) + 20 + 2 * 24 - 10, width: 9, height: 9 };
  return (await contrasts(page, clip)).filter((one) => one >= 3).length;
}

const dialog = (page: OpenWorkbook['page']) => page.getByRole('dialog');

async function write(workbook: OpenWorkbook, address: string, text: string) {
  await workbook.go(address);
  await workbook.page.keyboard.press('Shift+F2');
  await dialog(workbook.page).getByRole('textbox').waitFor();
  await workbook.page.keyboard.press('ControlOrMeta+A');
  await workbook.page.keyboard.type(text);
  await workbook.page.keyboard.press('Control+Enter');
  await dialog(workbook.page).waitFor({ state: 'detached' });
}

describe('a note of one’s own', () => {
  let workbook: OpenWorkbook;
  beforeAll(async () => {
    workbook = await openWorkbook();
    await workbook.addSheet();
  });
  afterAll(() => workbook.close());

  it('is written by Shift+F2, shown by the pane and by a corner of its cell, and taken back by one step', async () => {
    const { page, go, selected, violations } = workbook;
    // At the left of its cell, away from the corner.
    await workbook.enter('B2', 'lager');
    await go('D5');
    await expect.poll(() => cornerPixels(page)).toBe(0);
    await go('B2');
    await page.keyboard.press('Shift+F2');
    await dialog(page)
      .getByRole('textbox', { name: words.title('B2') })
      .waitFor();
    expect(await violations()).toEqual([]);
    await page.keyboard.type(TEXT);
    await page.keyboard.press('Control+Enter');
    await expect.poll(selected).toContain(TEXT);
    expect(await selected()).toContain('lager');
    await go('D5');
    await expect.poll(() => cornerPixels(page)).toBeGreaterThan(5);
    await page.keyboard.press('Control+z');
    await go('B2');
    await expect.poll(selected).not.toContain(TEXT);
    expect(await selected()).toContain('lager');
    await page.keyboard.press('Control+y');
    await expect.poll(selected).toContain(TEXT);
  });

  it('is left as it was by Escape, and deleted by a button', async () => {
    const { page, go, selected } = workbook;
    await write(workbook, 'B3', 'first');
    await expect.poll(selected).toContain('first');
    await page.keyboard.press('Shift+F2');
    await dialog(page).getByRole('textbox').waitFor();
    await page.keyboard.type('second');
    await page.keyboard.press('Escape');
    await dialog(page).waitFor({ state: 'detached' });
    expect(await selected()).toContain('first');
    await page.keyboard.press('Shift+F2');
    await dialog(page).getByRole('button', { name: words.remove }).click();
    await expect.poll(selected).not.toContain('first');
    await go('B2');
    await expect.poll(selected).toContain(TEXT);
  });

  it('is in the menu on cells', async () => {
    const { page, go, selected } = workbook;
    await go('B4');
    await page.keyboard.press('Shift+F10');
    await page.getByRole('button', { name: words.menu }).click();
    await dialog(page).getByRole('textbox').waitFor();
    await page.keyboard.type('by the menu');
    await dialog(page).getByRole('button', { name: words.save }).click();
    await expect.poll(selected).toContain('by the menu');
  });

  it('goes along when its cell is copied, and stays when the cell is emptied', async () => {
    const { page, go, selected } = workbook;
    await write(workbook, 'F2', 'goes along');
    await workbook.enter('F2', '7');
    await go('F2');
    await page.keyboard.press('Delete');
    await expect.poll(selected).not.toContain('7');
    expect(await selected()).toContain('goes along');
    await workbook.enter('F2', '7');
    await page.keyboard.press('Control+c');
    await go('G9');
    await page.keyboard.press('Control+v');
    await expect.poll(selected).toContain('goes along');
  });

  it('is there again when the page is opened anew, and in the saved file', async () => {
    const { page, go, selected } = workbook;
    await write(workbook, 'H2', 'stays\nin two lines');
    await workbook.saved();
    await workbook.reload();
    await go('H2');
    await expect.poll(selected).toContain('stays');
    const { bytes } = await savedFile(page);
    await openFile(page, 'notes.xlsx', bytes);
    await gridReady(page);
    await go('H2');
    await expect.poll(selected).toContain('in two lines');
  });
});

it('speaks of notes in German', async () => {
  const workbook = await openWorkbook({ locale: 'de-DE' });
  await workbook.addSheet();
  await workbook.go('B2');
  await workbook.page.keyboard.press('Shift+F2');
  await dialog(workbook.page).getByRole('button', { name: de.workbook.note.save }).waitFor();
  await workbook.close();
});
