import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { HOSTILE_FORMULAS } from '../workbook/hostile/formulas.js';
import { fileOfFormulas, HOSTILE_STRUCTURE_FILES } from '../workbook/hostile/kinds.js';
import { gridReady, openWorkbook } from './workbookPage.js';

type Kind = readonly [kind: string, bytes: () => Uint8Array];

/** So many formulas stand in one file: whatever they are, the page only takes their answers. */
const TOGETHER = 8;
const groups = <Item>(items: readonly Item[], size: number): Item[][] =>
  Array.from({ length: Math.ceil(items.length / size) }, (_, number) =>
    items.slice(number * size, (number + 1) * size),
  );

const FORMULA_FILES: Kind[] = groups(Object.entries(HOSTILE_FORMULAS), TOGETHER).map((formulas) => [
  formulas.map(([kind]) => kind).join(', '),
  () => fileOfFormulas(...formulas.map(([, formula]) => formula)),
]);

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
let page: Page;
/** What the page may be busy at a time: 2 seconds, on a loaded machine in the measure of an ordinary start. */
let limit: number;
let number = 0;

/** The longest that the page was busy, in milliseconds, since it was asked last. */
const longest = () =>
  page.evaluate(() => {
    const measured = Number(sessionStorage.getItem('longest') ?? 0);
    sessionStorage.removeItem('longest');
    return measured;
  });

beforeAll(async () => {
  workbook = await openWorkbook();
  page = workbook.page;
  await workbook.addSheet();
  await workbook.saved();
  await page.addInitScript(() => {
    new PerformanceObserver((list) => {
      const busy = list.getEntries().map(({ duration }) => duration);
      sessionStorage.setItem('longest', String(Math.max(Number(sessionStorage.getItem('longest') ?? 0), ...busy)));
    }).observe({ type: 'longtask', buffered: true });
  });
  await workbook.reload();
  await workbook.saved();
  limit = Math.max(2000, 12 * (await longest()));
});
afterAll(() => workbook.close());

/** Whether the file was taken; otherwise it was refused with a sentence. */
async function opened(bytes: Uint8Array): Promise<boolean> {
  number += 1;
  const name = `${number}.xlsx`;
  const buffer = Buffer.from(bytes);
  await page.locator('input[type="file"]').setInputFiles({ name, mimeType: 'application/octet-stream', buffer });
  const question = page.getByRole('dialog');
  const refusal = page.locator('.workbook-notice', { hasText: en.open.refused(name, '').trim() });
  await question.or(refusal).waitFor({ timeout: 60_000 });
  if ((await question.count()) === 0) return false;
  const left = page.waitForEvent('load');
  await workbook.confirm(en.open.confirm);
  await left;
  await gridReady(page);
  return true;
}

/** Opens each file in the place of the one before. Each page has to take keys, and to give way. */
async function openAll(kinds: readonly Kind[]) {
  for (const [kind, bytes] of kinds) {
    if (await opened(bytes())) {
      await workbook.go('D4');
      expect(await page.getByRole('button', { name: en.workbook.bringBack.button }).isEnabled(), kind).toBe(true);
    }
    expect(await longest(), kind).toBeLessThan(limit);
  }
}

describe('no hostile file keeps the page busy or locks it', { timeout: 600_000 }, () => {
  it.each(groups(FORMULA_FILES, 4))('files of formulas: %#', (...kinds) => openAll(kinds));
  it.each(groups(HOSTILE_STRUCTURE_FILES, 10))('files of other kinds: %#', (...kinds) => openAll(kinds));

  it('the workbook before is one question away', async () => {
    const ordinary = HOSTILE_STRUCTURE_FILES.find(([kind]) => kind === 'all cells that are taken, each with a formula');
    await page.getByRole('button', { name: en.workbook.startAfresh.button }).click();
    const left = page.waitForEvent('load');
    await workbook.confirm(en.workbook.startAfresh.button);
    await left;
    await gridReady(page);
    await workbook.addSheet();
    await workbook.saved();
    expect(await opened(ordinary?.[1]() as Uint8Array)).toBe(true);
    const back = page.waitForEvent('load');
    await page.getByRole('button', { name: en.workbook.bringBack.button }).click();
    await workbook.confirm(en.workbook.bringBack.button);
    await back;
    await gridReady(page);
    expect(await workbook.tabs()).toEqual(['Dosing', 'Sheet 1']);
    expect(await longest()).toBeLessThan(limit);
  });
});
