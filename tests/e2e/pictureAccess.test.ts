import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, it, onTestFinished } from 'vitest';
import { choose, contents, paneInExcel } from './paneInExcel.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The pane in Excel with the example of a function in the sheet and its formula selected. */
async function open(id: string, options: BrowserContextOptions = {}) {
  const { page, close } = await paneInExcel(options);
  onTestFinished(close);
  await choose(page, id);
  await page.locator('.pb-insertion .pb-primary').click();
  await page.locator('.pb-insertion [role="status"]:not(:empty)').waitFor();
  const [formula = ''] =
    Object.entries(await contents(page)).find(([, one]) => String(one).startsWith('=POWDER')) ?? [];
  await page.evaluate(
    ([row, column]) => window.book.select(row as number, column as number),
    [Number(formula.slice(1)) - 1, formula.charCodeAt(0) - 65],
  );
  await page.getByRole('figure').waitFor();
  return page;
}

/** What axe finds in the picture, texts that run out of it, and by how much the page is too wide. */
async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const rules = (globalThis as unknown as { axe: typeof import('axe-core') }).axe;
    const { violations } = await rules.run('figure');
    const svg = document.querySelector('figure svg') as SVGSVGElement;
    const frame = svg.getBoundingClientRect();
    const out = [...svg.querySelectorAll('text')].filter((text) => {
      const { left, right, top, bottom } = text.getBoundingClientRect();
      return left < frame.left - 1 || right > frame.right + 1 || top < frame.top - 1 || bottom > frame.bottom + 1;
    });
    const wider = document.documentElement.scrollWidth - window.innerWidth;
    return [
      ...violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`),
      ...out.map((text) => `runs out of the picture: ${text.textContent}`),
      ...(wider > 0 ? [`the page is ${wider} pixels too wide`] : []),
    ];
  });
}

const IDS = ['RUNCURVE', 'FEEDCURVE', 'FITRUN', 'LADDERFIT', 'FITLEAF', 'FITCOMPRESSION'];

describe('a picture in the pane of Excel', () => {
  it.each([...IDS, 'SAVING', 'SAVINGSPREAD', 'SENSITIVITY'])(
    'of %s has no fault that axe finds and no text that runs out, 320 pixels wide',
    async (id) => {
      const page = await open(id, { viewport: { width: 320, height: 900 }, bypassCSP: true });
      expect(await faults(page)).toEqual([]);
    },
  );

  it.each([
    ['wide', { viewport: { width: 900, height: 900 } }],
    ['in the dark', { colorScheme: 'dark' }],
    ['in a contrast theme', { forcedColors: 'active' }],
    ['in German', { locale: 'de-DE' }],
  ] as const)('has none %s', async (_, options) => {
    for (const id of ['FEEDCURVE', 'SAVING']) {
      expect(await faults(await open(id, { ...options, bypassCSP: true }))).toEqual([]);
    }
  });

  it('grows with the text, and has a name and a summary for a screen reader', async () => {
    const page = await open('RUNCURVE', { bypassCSP: true, viewport: { width: 700, height: 900 } });
    const drawing = page.getByRole('img', {
      name: /^Pressure and cake through the run.*The cake space ends the run\./,
    });
    const before = await drawing.evaluate((svg) => svg.clientHeight);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    await expect.poll(() => drawing.evaluate((svg) => svg.clientHeight)).toBeGreaterThan(before);
    expect(await faults(page)).toEqual([]);
    await page.setViewportSize({ width: 350, height: 900 });
    await expect.poll(() => faults(page)).toEqual([]);
  });
});
