import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { eachOnOwnSheet, type OpenWorkbook, openWorkbook } from './workbookPage.js';

let workbook: OpenWorkbook;

describe('the embedded workbook', () => {
  beforeEach(async () => {
    workbook = await openWorkbook();
  });
  afterEach(() => workbook.close());

  it('shows the dosing sheet on first opening', async () => {
    expect(await workbook.tabs()).toEqual(['Dosing']);
    expect(await workbook.selected()).toContain('Dosing');
  });

  it('has nothing to take back before anything was done', async () => {
    const undo = workbook.page.getByRole('button', { name: 'Undo' });
    expect(await undo.isDisabled()).toBe(true);
    await workbook.enter('B14', '61');
    await expect.poll(() => undo.isEnabled()).toBe(true);
  });

  it('shows the cell that is chosen by its name, and closes the list of names', async () => {
    const { page, selected } = workbook;
    await page.getByRole('button', { name: 'Names in this workbook' }).click();
    const name = page.locator('li', { hasText: 'presentKind' });
    await name.click();
    await expect.poll(selected).toContain('hydrogel');
    await expect.poll(() => name.count()).toBe(0);
    await page.keyboard.press('ArrowDown');
    await expect.poll(selected).toContain('0.65');
  });

  it('links to the licences of all its parts', async () => {
    await workbook.page.getByRole('tab', { name: 'Help' }).click();
    const link = workbook.page.getByRole('link', { name: 'Licences of all its parts' });
    const opened = workbook.page.waitForEvent('popup');
    await link.click();
    const page = await opened;
    await page.getByText('Powderbook contains these packages').waitFor();
  });

  it('adds, renames and deletes sheets, and asks before it deletes', async () => {
    await workbook.addSheet();
    await expect.poll(() => workbook.tabs()).toEqual(['Dosing', 'Sheet 1']);
    await workbook.page.getByRole('button', { name: 'Rename' }).click();
    await workbook.page.keyboard.type('Dosing');
    await workbook.page.keyboard.press('Enter');
    await expect.poll(() => workbook.notice()).toContain('Another sheet is called Dosing.');
    await workbook.page.getByRole('button', { name: 'Rename' }).click();
    await workbook.page.keyboard.type('Log');
    await workbook.page.getByText('Close', { exact: true }).evaluate((close: HTMLElement) => close.click());
    await expect.poll(() => workbook.notice()).toBe('');
    await workbook.page.keyboard.type('s');
    await workbook.page.keyboard.press('Enter');
    await expect.poll(() => workbook.tabs()).toEqual(['Dosing', 'Logs']);
    await workbook.page.getByRole('button', { name: 'Delete' }).click();
    await workbook.confirm('Cancel');
    expect(await workbook.tabs()).toEqual(['Dosing', 'Logs']);
    await workbook.page.getByRole('button', { name: 'Delete' }).click();
    await workbook.confirm('Delete');
    await expect.poll(() => workbook.tabs()).toEqual(['Dosing']);
  });

  it('lets the F6 key go from sheet to functions and back', async () => {
    const { page } = workbook;
    const inPane = () =>
      page.evaluate(() => document.querySelector('.workbook-pane')?.contains(document.activeElement));
    await workbook.go('B5');
    await page.keyboard.press('F6');
    await expect.poll(inPane).toBe(true);
    await page.keyboard.press('F6');
    await expect.poll(inPane).toBe(false);
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => workbook.selected()).toContain('B6');
  });
});

describe('a sheet of the embedded workbook', () => {
  eachOnOwnSheet((opened) => {
    workbook = opened;
  });

  it('calculates a typed function, with hints for its inputs', async () => {
    await workbook.go('A1');
    await workbook.page.keyboard.type('=POWDER.SWAPDOSE(60,');
    const hint = workbook.page.locator('[data-u-comp="rect-popup"]');
    await expect.poll(() => hint.textContent()).toContain('POWDER.SWAPDOSE(dose,fromKind,toKind,[position])');
    expect(await hint.textContent()).toContain('hydrogel, xerogel or adsorptive');
    await workbook.page.keyboard.type('"hydrogel","adsorptive")');
    await workbook.page.keyboard.press('Enter');
    await workbook.go('A1');
    await expect.poll(() => workbook.selected()).toContain('51');
  });

  it('calculates anew when an input changes', async () => {
    await workbook.enter('A1', '100');
    await workbook.enter('B1', '=POWDER.DRYMASS(A1,0.65)');
    await expect.poll(() => workbook.selected()).toContain('35');
    await workbook.enter('A1', '300');
    await workbook.go('B1');
    await expect.poll(() => workbook.selected()).toContain('105');
  });

  it('tells in the pane why a cell was refused', async () => {
    await workbook.enter('A1', '=POWDER.DRYMASS(100,65)');
    await expect.poll(() => workbook.selected()).toMatch(/#VALUE!.*Moisture.*65 was given/);
    await workbook.enter('A2', '1');
    expect(await workbook.selected()).not.toContain('Moisture');
  });

  it('spills an answer, also into another function', async () => {
    for (const [place, text] of [
      ['A1', '1'],
      ['A2', '2'],
      ['A3', '3'],
    ] as const)
      await workbook.enter(place, text);
    await workbook.enter('B1', '=SUM(POWDER.DRYMASS(A1:A3,0.1))');
    await expect.poll(() => workbook.selected()).toContain('5.4');
    await workbook.enter('C1', '=POWDER.DRYMASS(A1:A3,0.1)');
    await workbook.go('C3');
    await expect.poll(() => workbook.selected()).toContain('2.7');
  });

  it('takes an insertion by the pane back in one step', async () => {
    const { page, go, selected, notice } = workbook;
    await go('B2');
    await page.getByRole('searchbox').fill('POWDER.SWAPDOSE');
    await page.getByRole('button', { name: 'SWAPDOSE' }).first().click();
    await page.getByRole('button', { name: 'Put this into the sheet' }).click();
    await page.getByText(/^Written into B2:/).waitFor();
    await go('C7');
    const formula = '=POWDER.SWAPDOSE(C3,C4,C5,C6)';
    await expect.poll(selected).toContain(formula);
    await page.keyboard.press('Control+z');
    for (const address of ['B2', 'B3', 'C3', 'C7', 'D3']) {
      await go(address);
      await expect.poll(selected).toMatch(/blank$/);
    }
    await page.keyboard.press('Control+y');
    await go('C7');
    await expect.poll(selected).toContain(formula);
    expect(await notice()).toBe('');
  });

  it('goes a step back and forth by its buttons', async () => {
    const { page, enter, go, selected } = workbook;
    await enter('A1', 'one');
    await enter('A1', 'two');
    await page.getByRole('button', { name: 'Undo' }).click();
    await go('A1');
    await expect.poll(selected).toMatch(/one$/);
    await page.getByRole('button', { name: 'Redo' }).click();
    await go('A1');
    await expect.poll(selected).toMatch(/two$/);
    expect(await page.getByRole('button', { name: 'Redo' }).isDisabled()).toBe(true);
  });

  it('inserts a row from the menu on the cells, and formulas follow', async () => {
    const { page, enter, go, selected } = workbook;
    await enter('A1', '100');
    await enter('A2', '=POWDER.DRYMASS(A1,0.1)');
    await go('A1');
    const grid = await page.locator('.workbook-grid').boundingBox();
    await page.mouse.click((grid?.x ?? 0) + 80, (grid?.y ?? 0) + 60, { button: 'right' });
    expect(await page.getByText('Paste', { exact: true }).count()).toBe(0);
    // What is under the pointer as the menu opens is no choice yet.
    await page.getByText('Clear', { exact: true }).hover();
    await page.getByText('Contents', { exact: true }).waitFor();
    await page.getByText('Insert', { exact: true }).first().hover();
    const rows = page.getByText('rows above');
    // In the middle of the entry stands the field for how many.
    const entry = await rows.boundingBox();
    await rows.click({ position: { x: (entry?.width ?? 0) - 10, y: 10 } });
    await go('A3');
    await expect.poll(selected).toContain('=POWDER.DRYMASS(A2,0.1)');
  });

  it('goes to an address beyond the end of the sheet, and says how far a sheet reaches', async () => {
    await workbook.enter('BC6000', '7');
    await expect.poll(() => workbook.selected()).toMatch(/BC6000.*7$/);
    const box = workbook.page.getByLabel('Address or name of the cell');
    await box.fill('A1000000');
    await box.press('Enter');
    await expect.poll(() => workbook.notice()).toContain('A sheet reaches as far as 100000 rows and 256 columns here.');
  });

  it('keeps text that looks like a date', async () => {
    await workbook.enter('A1', '5-10');
    await expect.poll(() => workbook.selected()).toContain('5-10');
  });
});
