import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildPage } from '../../.config/bench/page.js';
import { openSite, type Site } from '../../.config/site.js';
import type { FUniver } from '../../taskpane/workbook/engine/facade.js';
import type { IEditorBridgeService } from '../../taskpane/workbook/engine/sheetsUi.js';
import { contrastOnWhite } from './contrast.js';

/** What the bare page has for all to see. */
declare const grid: { readonly api: FUniver };
declare const editState: IEditorBridgeService['getLatestEditCellState'];

let site: Site;
let browser: Browser;
let page: Page;
beforeAll(async () => {
  site = await openSite(await buildPage('bareEnginePage'));
  browser = await chromium.connect(site.browser.wsEndpoint());
  page = await browser.newPage({ viewport: { width: 1280, height: 800 }, locale: 'en-GB' });
  await page.goto(`${site.address}/workbook.html`);
  await page.locator('html[data-grid="ready"]').waitFor({ state: 'attached', timeout: 60_000 });
}, 240_000);
afterAll(async () => {
  await browser.close();
  await site.close();
});

// Where one of these fails, the engine has been cured: then the mend that it names can go.
describe('the engine without our mends, in a page', () => {
  it('still shows in a faint grey the formula that fills a cell from elsewhere: spilledFormula.ts', async () => {
    await page.evaluate(async () => {
      const sheet = grid.api.getActiveWorkbook()?.getActiveSheet();
      sheet?.getRange('A1').setValue('=SEQUENCE(3)');
      await grid.api.getFormula().onCalculationResultApplied(20_000);
      sheet?.getRange('A2').activate();
    });
    const colour = () =>
      page.evaluate(() => editState()?.documentLayoutObject.documentModel?.getBody()?.textRuns?.[0]?.ts?.cl?.rgb ?? '');
    await expect.poll(colour).not.toBe('');
    expect(contrastOnWhite(await colour())).toBeLessThan(4.5);
  });

  it('still takes Enter for an entry of its list of functions that nobody chose: completion.ts', async () => {
    const editing = () => page.evaluate(() => grid.api.getActiveWorkbook()?.isCellEditing());
    await page.evaluate(() => {
      grid.api.getActiveWorkbook()?.getActiveSheet().getRange('E5').activate();
    });
    await page.keyboard.type('=SU', { delay: 90 });
    await page.getByText('SUBSTITUTE', { exact: true }).waitFor();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByText('SUBSTITUTE', { exact: true }).count()).toBe(0);
    expect(await editing()).toBe(true);
    await page.keyboard.press('Escape');
    await expect.poll(editing).toBe(false);
  });

  it('still leaves its list of names open once one is chosen: nameList.ts', async () => {
    await page.evaluate(() => {
      grid.api.getActiveWorkbook()?.insertDefinedName('hereAndNow', 'Sheet!$C$7');
    });
    await page.locator('[data-u-comp="defined-name"] svg').first().click();
    const name = page.locator('li', { hasText: 'hereAndNow' });
    await name.click();
    const selected = () =>
      page.evaluate(() =>
        grid.api.getActiveWorkbook()?.getActiveSheet().getSelection()?.getActiveRange()?.getA1Notation(),
      );
    await expect.poll(selected).toBe('C7');
    await expect(name.waitFor({ state: 'detached', timeout: 1500 })).rejects.toThrow('Timeout');
    await page.keyboard.press('Escape');
  });

  it('still opens its menu on cells for the mouse alone: menuKeys.ts', async () => {
    const menu = page.locator('.univer-popup button');
    await page.locator('#univer-sheet-main-canvas_workbook').click({ position: { x: 200, y: 200 } });
    await page.keyboard.press('Shift+F10');
    await page.keyboard.press('ContextMenu');
    expect(await menu.count()).toBe(0);
    await page.locator('#univer-sheet-main-canvas_workbook').click({ position: { x: 200, y: 200 }, button: 'right' });
    await menu.first().waitFor();
    await page.keyboard.press('ArrowDown');
    expect(await page.evaluate(() => document.activeElement?.tagName)).not.toBe('BUTTON');
    await page.keyboard.press('Escape');
  });

  it('still cannot take back that a sheet was deleted which was shown and is read: goingSheet.ts', async () => {
    const sheets = await page.evaluate(async () => {
      const workbook = grid.api.getActiveWorkbook();
      workbook?.getActiveSheet().getRange('A9').setValue('=Feed!A1*2');
      const feed = workbook?.insertSheet('Feed');
      feed?.getRange('A1').setValue(21);
      await grid.api.getFormula().onCalculationResultApplied(20_000);
      if (feed) workbook?.setActiveSheet(feed);
      try {
        if (feed) workbook?.deleteSheet(feed);
      } catch {
        // It breaks off.
      }
      await grid.api.undo();
      return workbook?.getSheets().map((one) => `${one.getSheetName()} ${one.getRange('A9').getFormula()}`);
    });
    expect(sheets).not.toEqual(['Sheet =Feed!A1*2', 'Feed ']);
  });
});
