import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { box, chart, goToChart, TITLE, type Workbook } from './chartsPage.js';
import { openFile, savedFile } from './files.js';
import { gridReady, openWorkbook } from './workbookPage.js';

const fresh = async (workbook: Workbook) => {
  await workbook.page.getByRole('button', { name: 'Start afresh' }).click();
  await Promise.all([workbook.page.waitForEvent('load'), workbook.confirm('Start afresh')]);
  await gridReady(workbook.page);
};

describe('a chart on the sheet', () => {
  let workbook: Workbook;
  beforeAll(async () => {
    workbook = await openWorkbook({ viewport: { width: 1366, height: 768 } });
  });
  afterAll(() => workbook.close());

  it('stands in its place, follows the data and is not repeated in the pane', async () => {
    await goToChart(workbook);
    const line = chart(workbook).locator('.pb-curve-1').last();
    await expect.poll(() => line.getAttribute('d')).toMatch(/^M/);
    const before = await line.getAttribute('d');
    await workbook.enter(dosing.names.credit ?? '', '10');
    await expect.poll(() => line.getAttribute('d'), { timeout: 20_000 }).not.toBe(before);
    expect(await workbook.page.locator('.pb-pane').getByRole('figure').count()).toBe(0);
  });

  it('is moved and sized by keys and by a hand, one undo for each, and leaves the cells alone', async () => {
    await goToChart(workbook);
    const { page } = workbook;
    const [left = 0, top = 0, width = 0, height = 0] = await box(workbook);
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => box(workbook)).toEqual([left + 10, top, width, height]);
    await page.keyboard.press('Shift+ArrowDown');
    await expect.poll(() => box(workbook)).toEqual([left + 10, top, width, height + 10]);
    const title = await chart(workbook).locator('figcaption').boundingBox();
    const [x, y] = [(title?.x ?? 0) + 60, (title?.y ?? 0) + 10];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 30, y + 25, { steps: 3 });
    await page.mouse.up();
    await expect.poll(() => box(workbook)).toEqual([left + 40, top + 25, width, height + 10]);
    const grip = await chart(workbook).locator('[data-x="-1"][data-y="-1"]').boundingBox();
    const [cornerX, cornerY] = [(grip?.x ?? 0) + 4, (grip?.y ?? 0) + 4];
    await page.mouse.move(cornerX, cornerY);
    await page.mouse.down();
    await page.mouse.move(cornerX + 20, cornerY + 5, { steps: 3 });
    await page.mouse.up();
    await expect.poll(() => box(workbook)).toEqual([left + 60, top + 30, width - 20, height + 5]);
    const before = [
      [left + 40, top + 25, width, height + 10],
      [left + 10, top, width, height + 10],
      [left + 10, top, width, height],
      [left, top, width, height],
    ];
    for (const place of before) {
      await page.keyboard.press('Control+z');
      await expect.poll(() => box(workbook)).toEqual(place);
    }
    await page.keyboard.press('Control+y');
    await expect.poll(() => box(workbook)).toEqual([left + 10, top, width, height]);
  });

  it('stands where it was put after a new start', async () => {
    const [left = 0, top = 0] = await box(workbook);
    await workbook.saved();
    await workbook.reload();
    await goToChart(workbook);
    expect((await box(workbook)).slice(0, 2)).toEqual([left, top]);
  });

  it('goes out of view with its cells, never over the headers, and grows with the sheet', async () => {
    await goToChart(workbook);
    const { page } = workbook;
    const drawn = async () => (await chart(workbook).boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
    const before = await drawn();
    await page.mouse.move(before.x + 50, before.y + 50);
    await page.mouse.wheel(0, 120);
    await expect.poll(async () => (await drawn()).y).toBeLessThan(before.y);
    const clip = await chart(workbook).evaluate((one) => {
      const pane = one.closest('.sheet-charts-pane');
      return pane ? getComputedStyle(pane).clipPath : '';
    });
    // The letters of the columns and the four rows that stay.
    expect(Number(/inset\((\d+)/.exec(clip)?.[1])).toBeGreaterThan(100);
    await page.getByLabel('Size of the sheet').selectOption('1.5');
    await expect.poll(async () => Math.round((await drawn()).width / before.width / 0.05) * 0.05).toBeCloseTo(1.5, 2);
    await page.getByLabel('Size of the sheet').selectOption('1');
  });

  it('keeps its place through a file', async () => {
    await goToChart(workbook);
    const stood = await box(workbook);
    const { bytes } = await savedFile(workbook.page);
    await openFile(workbook.page, 'again.xlsx', bytes);
    await goToChart(workbook);
    const [left = 0, top = 0] = await box(workbook);
    // Widths of columns are rounded in a file.
    expect(Math.abs(left - (stood[0] ?? 0))).toBeLessThan(8);
    expect(Math.abs(top - (stood[1] ?? 0))).toBeLessThan(2);
  });

  it('is deleted by a key or its button, and comes back by undo', async () => {
    await fresh(workbook);
    await goToChart(workbook);
    await workbook.page.keyboard.press('Delete');
    await expect.poll(() => chart(workbook).count()).toBe(0);
    await workbook.page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => chart(workbook).count()).toBe(1);
    await goToChart(workbook);
    await chart(workbook)
      .getByRole('button', { name: `Delete chart: ${TITLE}` })
      .click();
    await expect.poll(() => chart(workbook).count()).toBe(0);
    await workbook.page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => chart(workbook).count()).toBe(1);
  });

  it('is printed below its figures, in the colours of paper', async () => {
    await goToChart(workbook);
    const { page } = workbook;
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    const printed = await page.evaluate(() => {
      const figure = document.querySelector('.workbook-print figure');
      const before = figure?.closest('tbody')?.previousElementSibling?.textContent ?? '';
      const ground = figure?.querySelector('svg');
      return {
        before,
        caption: figure?.querySelector('figcaption')?.textContent,
        axes: [...(figure?.querySelectorAll('.pb-axis') ?? [])].map((one) => one.textContent),
        ground: ground && getComputedStyle(ground).backgroundColor,
      };
    });
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
    expect(printed.caption).toBe(TITLE);
    expect(printed.before).toContain('Cake load');
    expect(printed.axes).toEqual(['Pressure drop (bar)', 'Run (hL)']);
    expect(printed.ground).toBe('rgb(255, 255, 255)');
  });
});

it.each([
  ['light', { colorScheme: 'light' }],
  ['dark', { colorScheme: 'dark' }],
  ['forced colours', { forcedColors: 'active' }],
] as const)('charts on the sheet break no accessibility rule: %s', async (_, options) => {
  const workbook = await openWorkbook(options);
  await goToChart(workbook);
  expect(await workbook.violations()).toEqual([]);
  await workbook.close();
});
