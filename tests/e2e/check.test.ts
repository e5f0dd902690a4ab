import type { Page } from 'playwright-core';
import { describe, expect, it, onTestFinished } from 'vitest';
import { openWorkbook, paste } from './workbookPage.js';

async function open(...options: Parameters<typeof openWorkbook>) {
  const workbook = await openWorkbook(...options);
  onTestFinished(workbook.close);
  await workbook.addSheet();
  return workbook;
}

const panel = (page: Page) => page.getByRole('tabpanel', { name: 'Check' });

async function check(page: Page, scope = 'All sheets') {
  await page.getByRole('tab', { name: 'Check' }).click();
  await page.getByLabel(scope).check();
  await page.getByRole('button', { name: 'Check now' }).click();
  await panel(page)
    .getByText(/^POWDER formulas checked: /)
    .waitFor();
}

describe('the check of a workbook', () => {
  it('finds nothing refused on the starter sheets', async () => {
    const { page, close } = await openWorkbook();
    onTestFinished(close);
    await page.getByRole('tab', { name: 'Sheets' }).click();
    for (const name of ['Trial log', 'Quotes', 'Year']) {
      await page.getByRole('button', { name: `Insert ${name}` }).click();
      await page.getByText(`The sheet ${name} was inserted.`).waitFor();
    }
    // What is not calculated yet is refused: the sheets are checked again until they are.
    const refused = async () => {
      await check(page);
      return panel(page).locator('.pb-findings-refused, .pb-findings-error').count();
    };
    await expect.poll(refused, { timeout: 50_000, interval: 2000 }).toBe(0);
    expect(await panel(page).textContent()).toMatch(/POWDER formulas checked: \d+\./);
  });

  it('lists refused and unusual inputs and percentages, each with the way there', async () => {
    const { page, enter, selected } = await open();
    await enter('A1', '65');
    await enter('B2', '=POWDER.DRYMASS(100,A1)');
    await enter('B3', '=POWDER.BODYFEED(-1,900)');
    await check(page, 'This sheet');
    const text = (await panel(page).textContent()) ?? '';
    expect(text).toContain('Refused inputs (1)');
    expect(text).toContain('Unusual inputs (1)');
    expect(text).toContain('For 65 percent write 65 % or 0.65.');
    await panel(page)
      .getByRole('button', { name: /^Go to A1/ })
      .click();
    await expect.poll(selected).toContain('A1');
  });

  it('puts the list on a sheet of its own', async () => {
    const { page, enter, tabs } = await open();
    await enter('B2', '=POWDER.DRYMASS(-100,0.1)');
    await check(page, 'This sheet');
    await page.getByRole('button', { name: 'Put the list on a sheet of its own' }).click();
    await page.getByText('The list stands on a new sheet, which is open now.').waitFor();
    expect(await tabs()).toContain('Check');
  });

  it('stops when told to, and keeps the list that stood there', async () => {
    const { page, enter, go } = await open();
    await enter('A1', '=POWDER.DRYMASS(-100,0.1)');
    await check(page, 'This sheet');
    await page.getByRole('tab', { name: 'Functions' }).click();
    await go('C1');
    const formulas = Array.from({ length: 20 }, () => '=POWDER.DRYMASS(100,0.1)').join('\t');
    await paste(page, Array.from({ length: 900 }, () => formulas).join('\n'));
    await page.getByRole('tab', { name: 'Check' }).click();
    // Both clicks from within the page: the work is over within a second.
    await page.evaluate(async () => {
      const press = (name: string) => {
        const button = [...document.querySelectorAll('button')].find(({ textContent }) => textContent === name);
        button?.click();
        return button !== undefined;
      };
      press('Check now');
      while (!press('Cancel')) await new Promise((go) => setTimeout(go, 5));
    });
    await panel(page).getByText('The check was cancelled.').waitFor();
    await panel(page).getByText('Refused inputs (1)').waitFor();
    expect(await page.getByRole('button', { name: 'Check now' }).isEnabled()).toBe(true);
    expect(await panel(page).getByRole('progressbar').count()).toBe(0);
  });

  it('can be used by keyboard alone, and axe finds nothing in it', async () => {
    const { page, enter, selected, violations } = await open();
    await enter('B2', '=POWDER.DRYMASS(-100,0.1)');
    await page.getByRole('tab', { name: 'Functions' }).focus();
    await page.keyboard.press('ArrowRight');
    await page.getByRole('button', { name: 'Check now' }).waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await panel(page).getByText('Refused inputs (1)').waitFor();
    expect(await violations()).toEqual([]);
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toMatch(/^Go to .*B2/);
    await page.keyboard.press('Enter');
    await expect.poll(selected).toContain('B2');
  });
});
