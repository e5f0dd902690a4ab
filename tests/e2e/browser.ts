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

const VIEWPORT = { width: 1280, height: 800 };

async function newProfile(options: BrowserContextOptions): Promise<BrowserContext> {
  const browser = await connect();
  return browser.newContext({ viewport: VIEWPORT, ...options });
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
  for (const page of profile.pages()) watchPage(page);
  profile.on('page', watchPage);
  return () => profile.off('page', watchPage);
}

/** Pages that wait for their next visit, by their profile: a page that goes on has its scripts compiled. */
const waiting = new WeakMap<BrowserContext, Page>();

/** Pages with something that the next visit would find, too. */
const changed = new WeakSet<Page>();
const lasting = ['addInitScript', 'exposeFunction', 'route'] as const;

async function newPage(profile: BrowserContext): Promise<Page> {
  const page = await profile.newPage();
  for (const name of lasting) {
    const change = (page[name] as (...given: unknown[]) => Promise<unknown>).bind(page);
    Object.assign(page, {
      [name]: (...given: unknown[]) => {
        changed.add(page);
        return change(...given);
      },
    });
  }
  return page;
}

/** A part of the site that does nothing. */
const LIGHT = 'functions.json';

/** A page with an empty storage and nothing that another visit left. */
async function emptyPage(profile: BrowserContext, site: string): Promise<Page> {
  const page = waiting.get(profile) ?? (await newPage(profile));
  waiting.delete(profile);
  if (!page.url().startsWith(site)) await page.goto(`${site}/${LIGHT}`);
  await page.mouse.move(0, 0);
  await page.evaluate(() => sessionStorage.clear());
  const session = await profile.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', { origin: site, storageTypes: 'all' });
  await session.detach();
  return page;
}

/**
 * Opens one page of the built site, such as `workbook.html`, with an empty storage. A visit that changes its profile, or
 * ends pages by force, asks for one of its own.
 */
export async function visit(
  name: string,
  {
    own = false,
    viewport = VIEWPORT,
    colorScheme = 'light',
    forcedColors = 'none',
    ...options
  }: BrowserContextOptions & { own?: boolean } = {},
): Promise<Visit> {
  const site = inject('site');
  const profile = await (own ? newProfile(options) : profileFor(options));
  const page = await emptyPage(profile, site);
  // What a page may be told later is no reason for a profile of its own, which would begin with nothing compiled.
  await page.setViewportSize(viewport ?? VIEWPORT);
  await page.emulateMedia({ media: null, colorScheme, forcedColors });
  const problems: string[] = [];
  const unwatch = watch(profile, site, problems);
  await page.goto(`${site}/${name}`);
  const close = async () => {
    unwatch();
    if (own) await profile.browser()?.close();
    else {
      const goesOn = !changed.has(page) && !page.isClosed();
      for (const one of profile.pages()) if (one !== page || !goesOn) await one.close();
      page.removeAllListeners();
      if (goesOn) {
        await page.goto(`${site}/${LIGHT}`);
        waiting.set(profile, page);
      }
    }
    expect(problems).toEqual([]);
  };
  return { page, problems, close };
}
