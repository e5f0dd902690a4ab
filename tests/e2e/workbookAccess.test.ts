import type { BrowserContextOptions } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { openWorkbook } from './workbookPage.js';

const settings: [string, BrowserContextOptions][] = [
  ['light', { colorScheme: 'light' }],
  ['dark', { colorScheme: 'dark' }],
  ['with forced colours', { forcedColors: 'active' }],
  ['narrow', { viewport: { width: 360, height: 740 } }],
];

describe('the embedded workbook for everyone', () => {
  it.each(settings)('breaks no accessibility rule: %s', async (_, options) => {
    const workbook = await openWorkbook(options);
    expect(await workbook.violations()).toEqual([]);
    await workbook.close();
  });

  it('shows sheet or functions where there is no room for both', async () => {
    const workbook = await openWorkbook({ viewport: { width: 360, height: 740 } });
    const pane = workbook.page.locator('.pb-pane');
    expect(await pane.isVisible()).toBe(false);
    await workbook.page.getByRole('button', { name: 'Functions' }).click();
    expect(await pane.isVisible()).toBe(true);
    expect(await workbook.violations()).toEqual([]);
    await workbook.page.getByRole('button', { name: 'Sheet', exact: true }).click();
    await workbook.enter(dosing.names.presentDose as string, '90');
    await expect.poll(() => pane.textContent()).toContain('90');
    await workbook.close();
  });
});
