import type { Browser, Page } from 'playwright-core';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { partsOf, rows, words, zipped } from '../workbook/xlsx/handMade.js';
import { actionsOn, gridReady, openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook({ own: true });
});
afterEach(() => workbook.close());

const plan = zipped(partsOf({ sheets: [rows('<c><v>1</v></c>')], names: ['Plan'] }));
const field = () => workbook.page.locator('input[type="file"]');

/** From the next start on, the page is busy without end as soon as it has drawn a sheet of that name. */
const busyWith = (sheet: string) =>
  workbook.page.context().addInitScript((name) => {
    new MutationObserver(() => {
      const shown = [...document.querySelectorAll('.workbook-tabs li')].some((tab) => tab.textContent === name);
      while (shown && !sessionStorage.getItem('mended'));
    }).observe(document, { childList: true, subtree: true });
  }, sheet);

/** Whether a page answers within a second. */
const answers = (page: Page) =>
  Promise.race([page.evaluate(() => true), new Promise<boolean>((resolve) => setTimeout(resolve, 1000, false))]);

/** The process of the page that has taken the most time of the processor. */
async function busiest(browser: Browser): Promise<number> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  const pages = processInfo.filter(({ type }) => type === 'renderer');
  return pages.sort((one, other) => other.cpuTime - one.cpuTime)[0]?.id as number;
}

/** Waits until a page is busy, ends it as the browser does with one that does not answer, and opens another one. */
async function killed(page: Page): Promise<Page> {
  await expect.poll(() => answers(page), { timeout: 20_000 }).toBe(false);
  const context = page.context();
  const gone = page.waitForEvent('crash');
  process.kill(await busiest(context.browser() as Browser), 'SIGKILL');
  await gone;
  const next = await context.newPage();
  const address = page.url();
  await page.close();
  await next.goto(address);
  return next;
}

describe('a workbook that keeps the page itself busy without end', () => {
  it('gives way to the workbook before where it came from a file, and the page was ended', async () => {
    await workbook.addSheet();
    await workbook.saved();
    await busyWith('Plan');
    await field().setInputFiles({ name: 'Plan.xlsx', mimeType: 'application/octet-stream', buffer: Buffer.from(plan) });
    const left = workbook.page.waitForEvent('load');
    await workbook.confirm(words.confirm);
    await left;
    const next = await killed(workbook.page);
    await gridReady(next);
    const actions = actionsOn(next);
    expect(await actions.tabs()).toEqual(['Dosing', 'Sheet 1']);
    expect(await actions.notice()).toContain(en.workbook.trialLeft);
  });

  it('is opened without calculating where it was there before, then put aside where that does not help', async () => {
    await workbook.addSheet();
    await workbook.saved();
    await busyWith('Sheet 1');
    await workbook.page.reload();
    // Nothing of it is calculated at the second start, which cannot help here.
    const second = await killed(workbook.page);
    const third = await killed(second);
    await gridReady(third);
    expect(await actionsOn(third).tabs()).toEqual(['Dosing']);
    expect(await actionsOn(third).notice()).toContain('is kept in this browser');
  });
});

describe('a start that has calculated its workbook', () => {
  it('is over: the next one calculates, also where this page is ended without a word', async () => {
    const mark = () => workbook.page.evaluate(() => localStorage.getItem('powderbook trial'));
    await expect.poll(mark).toBeNull();
  });
});

describe('a start that was ended before it could answer', () => {
  it('is followed by one that calculates nothing and says so; the one after that calculates', async () => {
    await workbook.addSheet();
    await workbook.enter('A1', '=1+1');
    await workbook.saved();
    // The page that is left takes its own mark away; this one stands for that of a page that was ended.
    await workbook.page.addInitScript(() => {
      if (!sessionStorage.getItem('marked')) localStorage.setItem('powderbook trial', 'usual');
      sessionStorage.setItem('marked', 'yes');
    });
    await workbook.reload();
    expect(await workbook.notice()).toContain(en.workbook.trialCareful);
    await workbook.enter('A2', '=A1+1');
    await workbook.saved();
    expect(await workbook.selected()).not.toContain('3');
    await workbook.reload();
    expect(await workbook.notice()).toBe('');
    await workbook.go('A2');
    await expect.poll(() => workbook.selected()).toContain('3');
  });
});
