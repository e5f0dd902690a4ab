import { describe, expect, it, onTestFinished } from 'vitest';
import { paneInExcel } from './paneInExcel.js';
import { eachOnOwnSheet, type OpenWorkbook, openWorkbook } from './workbookPage.js';

const explainedBy = (workbook: OpenWorkbook) => ({
  ...workbook,
  explained: workbook.page.locator('.pb-explained'),
});

async function open(options: Parameters<typeof openWorkbook>[0]) {
  const workbook = await openWorkbook(options);
  onTestFinished(workbook.close);
  await workbook.addSheet();
  return explainedBy(workbook);
}

describe('the explanation of the selected cell', () => {
  let workbook: OpenWorkbook;
  eachOnOwnSheet((opened) => {
    workbook = opened;
  });

  it('tells each input with value, unit, verdict and range, and the answer with its unit', async () => {
    const { enter, explained } = explainedBy(workbook);
    await enter('A1', '60');
    await enter('B1', '=POWDER.SWAPDOSE(A1,"hydrogel","adsorptive")');
    await expect.poll(() => explained.textContent()).toContain('51\u00a0g/hL');
    const text = (await explained.textContent()) ?? '';
    for (const words of [
      'Dose',
      '60\u00a0g/hL',
      'from A1',
      'usual 20 to 150',
      'preset 50%',
      'typed into the formula',
    ]) {
      expect(text).toContain(words);
    }
    expect(await explained.locator('.pb-range-mark').count()).toBe(1);
    expect(await explained.getByText('Method and sources').count()).toBe(1);
    expect(text).toContain('Powder dust can hold crystalline silica');
  });

  it('leads to the cell that a value comes from', async () => {
    const { enter, explained, selected, page } = explainedBy(workbook);
    await enter('C3', '500');
    await enter('A1', '=POWDER.DRYMASS(C3,10%)');
    await explained.getByRole('button', { name: 'Mass: go to C3' }).click();
    await expect.poll(selected).toContain('C3');
    expect(await page.getByRole('alert').allTextContents()).not.toContain(
      'This place is not in the workbook any more.',
    );
  });

  it('says why an input is refused, and follows a change of its cell', async () => {
    const { enter, go, explained } = explainedBy(workbook);
    await enter('A1', '65');
    await enter('B1', '=POWDER.DRYMASS(100,A1)');
    await expect
      .poll(() => explained.textContent())
      .toContain('Moisture must be a fraction from 0 to 0.999, but 65 was given.');
    expect(await explained.getByText('refused', { exact: true }).count()).toBe(1);
    await enter('A1', '0.65');
    await go('B1');
    await expect.poll(() => explained.textContent()).toContain('35\u00a0kg');
  });

  it('stands a call inside another one at the input that it serves', async () => {
    const { enter, explained } = explainedBy(workbook);
    await enter('A1', '=POWDER.BODYFEED(300,POWDER.SWAPDOSE(60,"hydrogel","adsorptive"))');
    const inner = explained.locator('.pb-input .pb-call');
    await expect.poll(() => inner.getByRole('heading').allTextContents()).toEqual(['POWDER.SWAPDOSE']);
  });

  it('explains a cell that an answer spills into by the formula that fills it', async () => {
    const { enter, go, explained, selected } = explainedBy(workbook);
    await enter('A1', '=POWDER.DRYMASS({100;200},10%)');
    await go('A2');
    await expect.poll(selected).toContain('It stands in A1 and fills this cell too.');
    expect(await selected()).toContain('180');
    await expect.poll(() => explained.textContent()).toContain('POWDER.DRYMASS');
    await go('A3');
    await expect.poll(() => explained.count()).toBe(0);
  });

  it('leads from an error that was handed on to the cell where it begins', async () => {
    const { enter, go, selected, page } = explainedBy(workbook);
    await enter('A1', '-5');
    await enter('B1', '=POWDER.DRYMASS(A1,0.5)');
    await enter('C1', '=B1*2');
    await enter('D1', '=POWDER.DRYMASS(C1,0.5)');
    expect(await selected()).not.toContain('Refused');
    await page.getByRole('button', { name: 'Go to where this error begins' }).click();
    await expect.poll(selected).toContain('Mass must be from 0');
    expect(await selected()).toContain('B1');
    await go('D1');
    await enter('E1', '=1/0');
    await page.getByRole('button', { name: 'Go to where this error begins' }).click();
    await page.getByText('It begins in this cell.').waitFor();
  });

  it('says which part only the workbook can calculate', async () => {
    const { enter, explained } = explainedBy(workbook);
    await enter('A1', '=POWDER.BODYFEED(MAX(100,300),90)');
    await expect.poll(() => explained.textContent()).toContain('MAX is calculated by the workbook alone');
  });
});

describe('the explanation, wherever it stands,', () => {
  it('speaks German where the browser does, and axe finds nothing', async () => {
    const { enter, explained, violations } = await open({ locale: 'de-DE' });
    await enter('A1', '=POWDER.BODYFEED(300;900)');
    await expect.poll(() => explained.textContent()).toContain('unüblich');
    expect(await violations()).toEqual([]);
  });

  it.each([
    ['in a narrow dark pane', { colorScheme: 'dark' }],
    ['in a contrast theme', { forcedColors: 'active' }],
  ] as const)('has no fault that axe finds %s', async (_, options) => {
    const { enter, explained, violations, page } = await open(options);
    await enter('A1', '=POWDER.BODYFEED(300,POWDER.SWAPDOSE(-1,"hydrogel","adsorptive"))');
    await expect.poll(() => explained.textContent()).toContain('refused');
    await explained.getByText('Method and sources').first().click();
    expect(await violations()).toEqual([]);
    const wider = await page.locator('.workbook-pane').evaluate((pane) => pane.scrollWidth - pane.clientWidth);
    expect(wider).toBeLessThanOrEqual(0);
  });

  it('reads Excel in the same way, shows the sentence of a refusal there too, and tells of a failing call', async () => {
    const { page, close } = await paneInExcel();
    onTestFinished(close);
    await page.evaluate(() => {
      const sheet = window.book.sheets.get('Sheet1');
      sheet?.contents.set('0,0', 65);
      sheet?.contents.set('4,1', '=POWDER.DRYMASS(100,A1)');
      sheet?.results.set('4,1', '#VALUE!');
      return window.book.select(4, 1);
    });
    const explained = page.locator('.pb-explained');
    await explained.getByText('Moisture must be a fraction from 0 to 0.999, but 65 was given.').first().waitFor();
    await page.evaluate(() => {
      window.book.editing = true;
    });
    const way = explained.getByRole('button', { name: 'Moisture: go to A1' });
    await way.click();
    await page.getByText('A cell is being edited: finish the entry, then try again.').waitFor();
    expect(await explained.isVisible()).toBe(true);
    await page.evaluate(() => {
      window.book.editing = false;
    });
    await way.click();
    await expect.poll(() => page.evaluate(() => window.book.active)).toMatchObject({ row: 0, column: 0 });
  });
});
