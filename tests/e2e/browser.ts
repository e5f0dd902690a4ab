import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { expect, inject } from 'vitest';

/** A page of the built site, watched from its first request to its last. */
export type Visit = {
  page: Page;
  /** Requests that left the site and errors in the console, each as a sentence. */
  problems: string[];
  /** Closes the page; fails if there were problems. */
  close(): Promise<void>;
};

/** The browser of this worker. */
export function connect(): Promise<Browser> {
  const browsers = inject('browsers');
  return chromium.connect(browsers[Number(process.env.VITEST_POOL_ID) % browsers.length] as string);
}

async function newProfile(options: BrowserContextOptions): Promise<BrowserContext> {
  const browser = await connect();
  return browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
}

/** Profiles by their options: what was compiled at one visit serves the next, which begins with an empty storage. */
const profiles = new Map<string, Promise<BrowserContext>>();
function profileFor(options: BrowserContextOptions): Promise<BrowserContext> {
  const key = JSON.stringify(options);
  const profile = profiles.get(key) ?? newProfile(options);
  profiles.set(key, profile);
  return profile;
}

/** Writes down what goes wrong in any page of a profile until it is told to stop. */
function watch(profile: BrowserContext, site: string, problems: string[]): () => void {
  const watchPage = (page: Page) => {
    page.on('pageerror', (error) => problems.push(`The page threw: ${error.message}`));
    page.on('console', (message) => {
      if (message.type() === 'error') problems.push(`The console shows an error: ${message.text()}`);
    });
    page.on('websocket', (socket) => problems.push(`A socket was opened: ${socket.url()}`));
    page.on('request', (request) => {
      const { origin, protocol } = new URL(request.url());
      if (protocol.startsWith('http') && origin !== site) problems.push(`A request left the site: ${request.url()}`);
    });
    page.on('response', (response) => {
      if (response.status() >= 400) problems.push(`The site answered ${response.status()}: ${response.url()}`);
    });
  };
  profile.on('page', watchPage);
  return () => profile.off('page', watchPage);
}

/**
 * Opens one page of the built site, such as `workbook.html`, with an empty storage. A visit that changes its profile, or
 * ends pages by force, asks for one of its own.
 */
export async function visit(
  name: string,
  { own = false, ...options }: BrowserContextOptions & { own?: boolean } = {},
): Promise<Visit> {
  const site = inject('site');
  const profile = await (own ? newProfile(options) : profileFor(options));
  const problems: string[] = [];
  const unwatch = watch(profile, site, problems);
  const page = await profile.newPage();
  const session = await profile.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', { origin: site, storageTypes: 'all' });
  await session.detach();
  await page.goto(`${site}/${name}`);
  const close = async () => {
    unwatch();
    if (own) await profile.browser()?.close();
    else for (const one of profile.pages()) await one.close();
    expect(problems).toEqual([]);
  };
  return { page, problems, close };
}
