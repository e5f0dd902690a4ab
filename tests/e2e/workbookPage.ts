import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect } from 'vitest';
import { de } from '../../taskpane/texts/de.js';
import { en } from '../../taskpane/texts/en.js';
import { languageOf } from '../../taskpane/texts/texts.js';
import { visit } from './browser.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The embedded workbook as a person uses it: keys into the grid, eyes on the pane. */
export async function openWorkbook(options: BrowserContextOptions & { own?: boolean } = {}) {
  const { page, problems, close } = await visit('workbook.html', { locale: 'en-GB', ...options });
  await gridReady(page);
  return { page, problems, close, ...actionsOn(page, options.locale) };
}

export type OpenWorkbook = Awaited<ReturnType<typeof openWorkbook>>;

/** Opens one workbook for all tests of a block; each of them begins on an empty sheet of its own. */
export function eachOnOwnSheet(take: (workbook: OpenWorkbook) => void, options?: Parameters<typeof openWorkbook>[0]) {
  let workbook: OpenWorkbook;
  beforeAll(async () => {
    workbook = await openWorkbook(options);
    take(workbook);
  });
  beforeEach(() => workbook.addSheet());
  afterAll(() => workbook.close());
}

export async function gridReady(page: Page) {
  await page.locator('html[data-grid="ready"]').waitFor({ state: 'attached', timeout: 40_000 });
}

/** Pastes rows of cells at the selected one, as from another spreadsheet: as text, as markup, or as both. */
export const paste = (page: Page, plain: string, html = '') =>
  page.evaluate(
    ([text = '', markup = '']) => {
      const data = new DataTransfer();
      if (text) data.setData('text/plain', text);
      if (markup) data.setData('text/html', markup);
      const target = document.activeElement ?? document.body;
      target.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }));
    },
    [plain, html],
  );

export function actionsOn(page: Page, locale = 'en-GB') {
  const words = { en, de }[languageOf(locale)].workbook;
  const selected = page.locator('.pb-selected');
  const go = async (address: string) => {
    const box = page.getByLabel(words.grid.address);
    await box.fill(address);
    await box.press('Enter');
    await expect.poll(() => selected.textContent()).toContain(address);
  };
  const enter = async (address: string, text: string) => {
    await go(address);
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
    await go(address);
  };
  return {
    go,
    /** Types into a cell, and selects it again. */
    enter,
    /** What the pane says of the selected cell. */
    selected: async () => (await selected.textContent()) ?? '',
    /** Waits for the answers of the first calculation, too: they are a change that is saved. */
    saved: () => page.locator('html[data-figures="calculated"] [data-saving="saved"]').waitFor(),
    notice: async () => (await page.locator('.workbook-notice').textContent()) ?? '',
    addSheet: () => page.getByRole('button', { name: words.tabs.add }).click(),
    show: (sheet: string) => page.locator('.workbook-tabs').getByRole('button', { name: sheet, exact: true }).click(),
    tabs: () => page.locator('.workbook-tabs li').allTextContents(),
    async confirm(name: string) {
      await page.getByRole('dialog').getByRole('button', { name }).click();
    },
    async reload() {
      await page.reload();
      await gridReady(page);
    },
    /** What the accessibility rules find, each as a sentence. */
    async violations(): Promise<string[]> {
      await page.evaluate(axe);
      return page.evaluate(async () => {
        const rules = (globalThis as unknown as { axe: typeof import('axe-core') }).axe;
        const { violations } = await rules.run(document, { resultTypes: ['violations'] });
        return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
      });
    },
  };
}
