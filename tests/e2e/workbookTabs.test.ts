import type { Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { actionsOn, gridReady, openWorkbook } from './workbookPage.js';

const words = en.workbook;
let first: Awaited<ReturnType<typeof openWorkbook>>;
let page: Page;
let second: ReturnType<typeof actionsOn>;
beforeEach(async () => {
  first = await openWorkbook();
  await first.addSheet();
  await first.enter('A1', 'from the first');
  await first.saved();
  page = await first.page.context().newPage();
  await page.goto(first.page.url());
  await gridReady(page);
  second = actionsOn(page);
});
afterEach(() => first.close());

const status = (of: Page) => of.locator('.workbook-saving').textContent();

describe('a workbook that is open in two tabs', () => {
  it('can only be read in the second one, which says so', async () => {
    expect(await status(page)).toBe(words.saving.elsewhere);
    await second.go('A1');
    await page.keyboard.type('t');
    await page.getByText(en.host.readOnly).waitFor();
    await page.keyboard.press('Escape');
    await second.go('A1');
    await expect.poll(() => second.selected()).toContain('from the first');
    await page.keyboard.press('Delete');
    await second.go('A1');
    await expect.poll(() => second.selected()).toContain('from the first');
    for (const name of [words.tabs.add, words.tabs.rename, words.tabs.delete, words.startAfresh.button])
      expect(await page.getByRole('button', { name, exact: true }).isDisabled(), name).toBe(true);
  });

  it('is taken over by the second one with what was typed in the first a moment before', async () => {
    await first.page.bringToFront();
    await first.go('A2');
    // Not even entered yet.
    await first.page.keyboard.type('at the last moment');
    await page.bringToFront();
    await page.getByRole('button', { name: words.takeOver }).click();
    await second.saved();
    await gridReady(page);
    await second.go('A2');
    await expect.poll(() => second.selected()).toContain('at the last moment');
    await second.enter('A3', 'from the second');
    await second.saved();
    expect(await status(first.page)).toBe(words.saving.elsewhere);
    expect(await first.notice()).toContain(words.takenOver);
    // And back again.
    await first.page.bringToFront();
    await first.page.getByRole('button', { name: words.takeOver }).click();
    await first.saved();
    await gridReady(first.page);
    await first.go('A3');
    await expect.poll(() => first.selected()).toContain('from the second');
  });

  it('is taken over from a page that hangs, too', async () => {
    await first.page.evaluate(() => {
      // It hears nothing any more, as a page that calculates without end.
      const end = performance.now() + 12_000;
      setTimeout(() => {
        while (performance.now() < end);
      });
    });
    await page.getByRole('button', { name: words.takeOver }).click();
    await page.locator('.workbook-saving[data-saving="saved"]').waitFor({ timeout: 20_000 });
    await gridReady(page);
    await second.enter('A4', 'goes on');
    await second.saved();
    await expect.poll(() => status(first.page), { timeout: 20_000 }).toBe(words.saving.elsewhere);
  });
});

describe('a page that is left', () => {
  const asked = (of: Page) => {
    const questions: string[] = [];
    of.on('dialog', (dialog) => {
      questions.push(dialog.type());
      void dialog.accept();
    });
    return questions;
  };

  it('asks first where the storage refused what was entered', async () => {
    const questions = asked(first.page);
    await first.page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
      };
    });
    await first.enter('A2', 'nowhere');
    await expect.poll(() => status(first.page)).toBe(words.saving.failed);
    await first.page.reload();
    expect(questions).toEqual(['beforeunload']);
  });

  it('asks nothing where everything is saved, or kept at the last moment', async () => {
    const questions = asked(first.page);
    await first.reload();
    await first.enter('A2', 'late');
    await first.reload();
    expect(questions).toEqual([]);
    await first.go('A2');
    await expect.poll(() => first.selected()).toContain('late');
  });
});
