import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { describe, expect, it, onTestFinished } from 'vitest';
import { choose, contents, paneInExcel } from './paneInExcel.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

declare global {
  interface Window {
    axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[]; passes: unknown[] }> };
  }
}

/** What axe finds, and by how much the page is wider than its window. */
async function faults(page: Page, view: string): Promise<string[]> {
  const { violations, passes } = await page.evaluate(() => window.axe.run());
  expect(passes.length).toBeGreaterThan(10);
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  return [
    ...violations.map(({ id, nodes }) => `${view}: ${id} at ${nodes.map(({ html }) => html).join(' ')}`),
    ...(wider > 0 ? [`${view}: ${wider} pixels too wide`] : []),
  ];
}

async function faultsOfEveryView(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const found = await faults(page, 'list');
  for (const id of ['SWAPDOSE', 'LADDERFIT', 'RUNREPORT', 'RUNCURVE', 'PLANCHECK']) {
    await choose(page, id);
    found.push(...(await faults(page, id)));
    await page.getByRole('article').getByRole('button').first().click();
  }
  await choose(page, 'DRYMASS');
  await page.getByRole('textbox').first().fill('-1');
  found.push(...(await faults(page, 'a refused input')));
  for (const tab of [1, 2, 3]) {
    await page.getByRole('tab').nth(tab).click();
    await page.getByRole('tabpanel').locator('p').first().waitFor();
    found.push(...(await faults(page, `tab ${tab}`)));
  }
  await page.evaluate(() => {
    const sheet = window.book.sheets.get('Sheet1');
    sheet?.contents.set('4,1', '=POWDER.BODYFEED(300,POWDER.SWAPDOSE(-1,"hydrogel","adsorptive"))');
    sheet?.results.set('4,1', '#VALUE!');
    return window.book.select(4, 1);
  });
  await page.locator('.pb-explained .pb-call .pb-call').waitFor();
  found.push(...(await faults(page, 'an explained cell')));
  await page.getByRole('tab').nth(1).click();
  await page.locator('.pb-check .pb-primary').click();
  await page.locator('.pb-findings').first().waitFor();
  found.push(...(await faults(page, 'what the check found')));
  return found;
}

describe('the pane', () => {
  it.each([
    ['320 pixels wide', { viewport: { width: 320, height: 600 } }],
    ['350 pixels wide in the dark', { colorScheme: 'dark' }],
    ['900 pixels wide', { viewport: { width: 900, height: 700 } }],
    ['in a contrast theme', { forcedColors: 'active' }],
    ['in German', { locale: 'de-DE' }],
  ] as const)('has no fault that axe finds and nothing that runs over, %s', async (_, options) => {
    const { page, close } = await paneInExcel({ ...options, bypassCSP: true });
    onTestFinished(close);
    expect(await faultsOfEveryView(page)).toEqual([]);
  });

  it('runs over nowhere at twice the text size', async () => {
    const { page, close } = await paneInExcel({ bypassCSP: true });
    onTestFinished(close);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    expect(await faultsOfEveryView(page)).toEqual([]);
  });

  it('can be used by keyboard alone, from the search to the written block and on to the help', async () => {
    const { page, close } = await paneInExcel();
    onTestFinished(close);
    const press = async (...keys: string[]) => {
      for (const key of keys) await page.keyboard.press(key);
    };
    const focused = () => page.evaluate(() => document.activeElement?.textContent || document.activeElement?.id || '');

    await press('Tab', 'Tab');
    await page.keyboard.type('swapdose');
    await press('Tab', 'Tab');
    expect(await focused()).toContain('SWAPDOSE');
    await press('Enter');
    expect(await focused()).toBe('POWDER.SWAPDOSE');
    await press('Tab');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('80');
    await press('Enter');
    await page.getByText('Written into A1:C6.').waitFor();
    expect(await contents(page)).toMatchObject({ B2: 80, B6: '=POWDER.SWAPDOSE(B2,B3,B4,B5)' });

    await page.getByRole('tab', { selected: true }).focus();
    await press('End');
    expect(await focused()).toBe('Help');
    await page.getByRole('heading', { name: 'Blank cells and 0' }).waitFor();
    await press('ArrowRight');
    expect(await focused()).toBe('Functions');
    expect(await page.getByLabel('Dose', { exact: true }).inputValue()).toBe('80');
  });

  it('shows where the focus is', async () => {
    const { page, close } = await paneInExcel();
    onTestFinished(close);
    await page.keyboard.press('Tab');
    const outline = await page.evaluate(() => {
      const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement as Element);
      return [outlineStyle, outlineWidth];
    });
    expect(outline).toEqual(['solid', '2px']);
  });
});
