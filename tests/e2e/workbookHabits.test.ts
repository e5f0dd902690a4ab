import { describe, expect, it } from 'vitest';
import { eachOnOwnSheet, type OpenWorkbook } from './workbookPage.js';

let workbook: OpenWorkbook;
eachOnOwnSheet((opened) => {
  workbook = opened;
});

const bar = () => workbook.page.getByRole('toolbar', { name: 'Formats and tools' });
const press = (key: string) => workbook.page.keyboard.press(key);
/** What the selected cell of the pane comes to: where it is, and what it holds. */
const expectSelected = (...parts: string[]) =>
  expect.poll(workbook.selected).toEqual(expect.stringMatching(new RegExp(parts.join('.*'))));
const table = async () => {
  for (const [address, text] of Object.entries({
    A1: 'beer',
    B1: 'mass',
    A2: 'c',
    B2: '3',
    A3: 'a',
    B3: '20',
    A4: 'b',
    B4: '1',
  }))
    await workbook.enter(address, text);
};

describe('the format bar', () => {
  it('gives a number its format, decimals and bold, and undo takes them back', async () => {
    await workbook.enter('B2', '1234.5');
    await bar().getByLabel('Number format').selectOption('euro');
    await bar().getByRole('button', { name: 'One decimal less' }).click();
    await bar().getByRole('button', { name: 'Bold' }).click();
    await expect.poll(() => bar().getByRole('button', { name: 'Bold' }).getAttribute('aria-pressed')).toBe('true');
    expect(await bar().getByLabel('Number format').inputValue()).toBe('euro');
    await bar().getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => bar().getByRole('button', { name: 'Bold' }).getAttribute('aria-pressed')).toBe('false');
  });

  it('sorts the table around the selected cell below its titles, formulas that read it following', async () => {
    await table();
    await workbook.enter('D1', '=B2*2');
    await workbook.go('B3');
    await bar().getByRole('button', { name: 'Sort descending' }).click();
    await workbook.go('A2');
    await expectSelected('A2', 'a');
    await workbook.go('D1');
    await expectSelected('D1', '40');
  });

  it('filters a table, and SUBTOTAL leaves out what is hidden', async () => {
    await table();
    await workbook.enter('D1', '=SUBTOTAL(9,B2:B4)');
    await workbook.go('B2');
    await bar().getByRole('button', { name: 'Filter' }).click();
    const { page } = workbook;
    const canvas = page.locator('[id^="univer-sheet-main-canvas"]');
    const corner = await canvas.boundingBox();
    await page.mouse.click((corner?.x ?? 0) + 213, (corner?.y ?? 0) + 32);
    const panel = page.getByRole('dialog', { name: 'Filter' });
    await panel.waitFor();
    expect(await workbook.violations()).toEqual([]);
    await panel.getByRole('checkbox', { name: /^20/ }).evaluate((box: HTMLElement) => box.click());
    await page.getByRole('button', { name: 'Confirm' }).click();
    await workbook.go('D1');
    await expectSelected('D1', 'Value4$');
    await workbook.go('B2');
    await bar().getByRole('button', { name: 'Filter' }).click();
    await workbook.go('D1');
    await expectSelected('D1', 'Value24$');
  });

  it('says below the sheet what the selected cells come to, and draws the sheet larger', async () => {
    await table();
    await workbook.go('A1');
    await press('Control+Shift+End');
    const summary = workbook.page.locator('.workbook-summary');
    await expect.poll(() => summary.textContent()).toBe('Sum 24Average 8Count 8');
    await workbook.page.getByLabel('Size of the sheet').selectOption('1.5');
    await expect.poll(() => workbook.page.getByLabel('Size of the sheet').inputValue()).toBe('1.5');
  });
});

describe('the tabs', () => {
  it('move, hide and come back', async () => {
    const more = workbook.page.locator('.workbook-more');
    const before = await workbook.tabs();
    await more.locator('summary').click();
    await more.getByRole('button', { name: 'Move to the left' }).click();
    await expect.poll(workbook.tabs).toEqual([...before.slice(0, -2), before.at(-1), before.at(-2)]);
    await more.getByRole('button', { name: 'Hide' }).click();
    await expect.poll(workbook.tabs).toEqual(before.slice(0, -1));
    expect(await workbook.violations()).toEqual([]);
    await more.getByLabel('Show a hidden sheet').selectOption({ label: before.at(-1) as string });
    await expect.poll(workbook.tabs).toContain(before.at(-1));
    await press('Escape');
  });
});

describe('the keys', () => {
  it('go by pages, to the ends of rows and of the sheet', async () => {
    await workbook.enter('D40', '1');
    await workbook.go('B2');
    await press('PageDown');
    await expect.poll(async () => Number(/B(\d+)/.exec(await workbook.selected())?.[1])).toBeGreaterThan(10);
    await press('PageUp');
    await expectSelected('B2');
    await press('End');
    await expectSelected('D2');
    await press('Home');
    await expectSelected('A2');
    await press('Control+End');
    await expectSelected('D40');
    await press('Control+Home');
    await expectSelected('A1');
    await press('Control+ArrowDown');
    await expectSelected('A5000');
  });

  it('select columns and rows, and further from the cell that a selection began with', async () => {
    await table();
    const summary = workbook.page.locator('.workbook-summary');
    await workbook.go('B2');
    await press('Control+Space');
    await expect.poll(() => summary.textContent()).toContain('Sum 24');
    await workbook.go('B2');
    await press('Shift+Space');
    await expect.poll(() => summary.textContent()).toBe('Sum 3Average 3Count 2');
    await workbook.go('A2');
    await press('Control+Shift+End');
    await expect.poll(() => summary.textContent()).toBe('Sum 24Average 8Count 6');
  });

  it('open the menu on cells, which can be gone through and left by keys', async () => {
    await workbook.enter('C3', 'x');
    for (const key of ['Shift+F10', 'ContextMenu']) {
      await press(key);
      const first = workbook.page.getByRole('button', { name: 'Clear' });
      await expect.poll(() => first.evaluate((button) => button === document.activeElement)).toBe(true);
      expect(await workbook.violations()).toEqual([]);
      await press('Escape');
      await first.waitFor({ state: 'detached' });
    }
    await press('Shift+F10');
    await expect.poll(() => workbook.page.evaluate(() => document.activeElement?.textContent)).toBe('Clear');
    await press('ArrowRight');
    await expect.poll(() => workbook.page.evaluate(() => document.activeElement?.textContent)).toBe('Contents');
    await press('Enter');
    await expectSelected('C3', 'blank');
  });

  it('find, replace, choose a format, enter the day and break a line', async () => {
    await workbook.go('B2');
    await press('Control+1');
    await expect
      .poll(() =>
        bar()
          .getByLabel('Number format')
          .evaluate((one) => one === document.activeElement),
      )
      .toBe(true);
    await workbook.go('B2');
    await press('Control+Semicolon');
    await expect.poll(() => bar().getByLabel('Number format').inputValue()).toBe('date');
    await workbook.go('B3');
    await workbook.page.keyboard.type('one');
    await press('Alt+Enter');
    await workbook.page.keyboard.type('two');
    await press('Enter');
    await workbook.go('B3');
    await expectSelected('B3', 'one\\s+two');
    for (const key of ['Control+f', 'Control+h']) {
      await workbook.go('B3');
      await press(key);
      const field = workbook.page.getByPlaceholder('Find in this Sheet');
      await field.waitFor();
      expect(await workbook.violations()).toEqual([]);
      await press('Escape');
      await field.waitFor({ state: 'detached' });
    }
  });
});

describe('what is typed', () => {
  it.each([
    ['27/11/2026', '46,353', 'date'],
    ['2026-11-27', '46,353', 'date'],
    ['€1.95', '1.95', 'euro'],
    ['$2.10', '2.1', 'dollar'],
    ['(500)', '-500', 'number'],
    ['1:30', '0.0625', 'time'],
    ['+450*2', '900', 'general'],
  ])('becomes what a worksheet makes of it: %s', async (typed, value, kind) => {
    await workbook.enter('B2', typed);
    await expectSelected('B2', value);
    await expect.poll(() => bar().getByLabel('Number format').inputValue()).toBe(kind);
  });
});
