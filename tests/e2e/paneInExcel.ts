import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect, inject } from 'vitest';
import type { FakeBook } from '../pane/fakeBook.js';
import { fakeExcel } from '../pane/fakeExcel.js';
import { fakeParts } from '../pane/fakeParts.js';
import { connect } from './browser.js';

declare global {
  interface Window {
    book: FakeBook;
  }
}

/** Stands in for office.js: the fake workbook, and just enough for the worksheet functions to register. */
const officeScript = (language: string) => `
  const { book, Excel, Office } = (${fakeExcel})({ ${Object.entries(fakeParts).map((part) => part.join(': '))} });
  Office.context.contentLanguage = ${JSON.stringify(language)};
  Object.assign(window, { book, Excel, Office, CustomFunctions: { associate() {}, Error: class {} } });
`;

/** The built pane as Excel shows it, in a workbook that is a fake. Fails at closing if the console showed an error. */
export async function paneInExcel({ locale = 'en-GB', ...options }: BrowserContextOptions = {}) {
  const browser = await connect();
  const context = await browser.newContext({ viewport: { width: 350, height: 700 }, locale, ...options });
  const problems: string[] = [];
  await context.route('**/assets/office/office.js', (route) =>
    route.fulfill({ contentType: 'text/javascript', body: officeScript(locale) }),
  );
  const page = await context.newPage();
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(message.text());
  });
  await page.goto(`${inject('site')}/taskpane.html`);
  await page.getByRole('tab').first().waitFor();
  const close = async () => {
    await browser.close();
    expect(problems).toEqual([]);
  };
  return { page, close };
}

/** Opens the card of one function through the search. */
export async function choose(page: Page, id: string): Promise<void> {
  await page.getByRole('searchbox').fill(`POWDER.${id}`);
  await page.getByRole('button', { name: id }).first().click();
  await page.getByRole('heading', { name: `POWDER.${id}` }).waitFor();
}

/** What stands in the fake workbook's active sheet, by A1 address as far as column Z. */
export const contents = (page: Page): Promise<Record<string, string | number>> =>
  page.evaluate(() => {
    const cells = [...(window.book.sheets.get(window.book.active.sheet)?.contents ?? [])];
    const address = (key: string) => {
      const [row = 0, column = 0] = key.split(',').map(Number);
      return `${String.fromCharCode(65 + column)}${row + 1}`;
    };
    return Object.fromEntries(cells.map(([key, content]) => [address(key), content]));
  });
