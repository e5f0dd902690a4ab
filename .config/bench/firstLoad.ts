import { chromium } from 'playwright-core';
import { openSite, type Site } from '../site.js';
import { buildPage } from './page.js';
import type { Row } from './timing.js';

const LOADS = 7;

/** What is looked for on the page, and when it was first painted, in milliseconds since navigation. */
const PLACES = {
  shell: '.workbook-bar button',
  pane: '.workbook-pane [role="tabpanel"] button',
  grid: 'html[data-grid="ready"]',
};

type Times = Record<keyof typeof PLACES, number>;

/**
 * Runs in the page from its first moment on: notes each place in the frame that shows it. As text, since what the
 * loader of this script adds to its functions is not there in a page.
 */
const WATCH = `{
  const seen = (globalThis.seen = {});
  const look = () => {
    for (const [name, selector] of Object.entries(${JSON.stringify(PLACES)}))
      if (seen[name] === undefined && document.querySelector(selector)) seen[name] = performance.now();
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}`;

/** One load of a page in a browser profile that has never seen it. */
async function load({ browser, address }: Site): Promise<Times> {
  const connected = await chromium.connect(browser.wsEndpoint());
  const context = await connected.newContext({ viewport: { width: 1366, height: 768 } });
  const page = await context.newPage();
  await page.addInitScript({ content: WATCH });
  await page.goto(`${address}/workbook.html`, { waitUntil: 'commit' });
  await page.waitForFunction(() => 'grid' in (globalThis as unknown as { seen: Times }).seen);
  const times = await page.evaluate(() => (globalThis as unknown as { seen: Times }).seen);
  await connected.close();
  return times;
}

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] as number;

/** From navigation to what a person waits for, beside the engine's bare page, loaded in turn. */
export async function firstLoad(): Promise<Row[]> {
  const ours = await openSite();
  const bare = await openSite(await buildPage('bareEnginePage'));
  const loads: Times[] = [];
  const bareLoads: Times[] = [];
  for (let turn = 0; turn < LOADS; turn++) {
    bareLoads.push(await load(bare));
    loads.push(await load(ours));
  }
  await Promise.all([ours.close(), bare.close()]);
  const of = (times: readonly Times[], name: keyof Times) => median(times.map((one) => one[name]));
  const second = { reference: 'one second', referenceTime: 1000, aim: 1 };
  return [
    { title: 'workbook, shell painted', time: of(loads, 'shell'), ...second },
    { title: 'workbook, pane painted', time: of(loads, 'pane'), ...second },
    {
      title: 'workbook, grid usable',
      time: of(loads, 'grid'),
      reference: 'the engine’s bare page, an empty sheet usable',
      referenceTime: of(bareLoads, 'grid'),
      aim: 1.2,
    },
  ];
}
