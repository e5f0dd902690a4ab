import { type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { expect, inject } from 'vitest';

/** A page of the built site, watched from its first request to its last. */
export type Visit = {
  page: Page;
  /** Requests that left the site and errors in the console, each as a sentence. */
  problems: string[];
  /** Closes the page; fails if there were problems. */
  close(): Promise<void>;
};

/** Opens one page of the built site, such as `workbook.html`, in a browser profile of its own. */
export async function visit(name: string, options: BrowserContextOptions = {}): Promise<Visit> {
  const site = inject('site');
  const browser = await chromium.connect(inject('browser'));
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
  const problems: string[] = [];

  await context.route(
    (address) => address.protocol.startsWith('http') && address.origin !== site,
    async (route) => {
      problems.push(`A request left the site: ${route.request().url()}`);
      await route.abort();
    },
  );
  context.on('page', (page) => {
    page.on('pageerror', (error) => problems.push(`The page threw: ${error.message}`));
    page.on('console', (message) => {
      if (message.type() === 'error') problems.push(`The console shows an error: ${message.text()}`);
    });
    page.on('websocket', (socket) => problems.push(`A socket was opened: ${socket.url()}`));
    page.on('response', (response) => {
      if (response.status() >= 400) problems.push(`The site answered ${response.status()}: ${response.url()}`);
    });
  });

  const page = await context.newPage();
  await page.goto(`${site}/${name}`);
  const close = async () => {
    await browser.close();
    expect(problems).toEqual([]);
  };
  return { page, problems, close };
}
