import { describe, expect, it, onTestFinished } from 'vitest';
import { ladderFit } from '../../src/stabiliser/ladderFit.js';
import { choose, contents, paneInExcel } from './paneInExcel.js';

async function open(...options: Parameters<typeof paneInExcel>) {
  const { page, close } = await paneInExcel(...options);
  onTestFinished(close);
  return page;
}

/** Each figure of a report has a row, and one more where its standard error is told. */
const rowsOf = ({ output: { fields } }: typeof ladderFit) =>
  Object.values(fields).reduce((rows, field) => rows + ('error' in field ? 2 : 1), 0);

describe('the pane in Excel', () => {
  it('narrows the list of functions while one types, and says how many are left', async () => {
    const page = await open();
    await page.getByRole('searchbox').fill('delivery');
    await page.getByText(/^\d+ of \d+ functions$/).waitFor();
    expect(await page.getByRole('button', { name: /DRYMASS/ }).count()).toBe(1);
    expect(await page.getByRole('button', { name: /SWAPDOSE/ }).count()).toBe(0);
  });

  it('opens a family on request, and finds it open again after a visit to one of its functions', async () => {
    const page = await open();
    await page.getByText('Moisture', { exact: true }).click();
    await page.getByRole('button', { name: /DRYMASS/ }).click();
    await page.getByRole('button', { name: 'All functions' }).click();
    expect(await page.getByRole('button', { name: /DRYMASS/ }).evaluate((one) => one === document.activeElement)).toBe(
      true,
    );
  });

  it('explains a function: question, limits, usual range, source, example, caution and method', async () => {
    const page = await open();
    await choose(page, 'SWAPDOSE');
    const text = (await page.getByRole('article').textContent()) ?? '';
    for (const words of [
      'How much of the other stabiliser replaces the present dose?',
      'limits 0 to 10,000\u00a0g/hL, usual 20 to 150',
      'MBAA Technical Quarterly',
      '=POWDER.SWAPDOSE(60,"hydrogel","adsorptive")',
      '51\u00a0g/hL',
      'Powder dust can hold crystalline silica',
      'Not pvpp: it removes polyphenol',
      'preset 50%',
    ]) {
      expect(text).toContain(words);
    }
  });

  it('calculates with other values, and goes back to the example', async () => {
    const page = await open();
    await choose(page, 'SWAPDOSE');
    await page.getByLabel('Dose', { exact: true }).fill('200');
    await page.getByText('170\u00a0g/hL').waitFor();
    expect(await page.getByText('unusual', { exact: true }).count()).toBe(1);
    await page.getByRole('button', { name: 'Back to the example' }).click();
    await page.getByText('51\u00a0g/hL').waitFor();
  });

  it('writes the inputs and the formula at the selected cell', async () => {
    const page = await open();
    await page.evaluate(() => window.book.select(2, 1));
    await choose(page, 'DRYMASS');
    await page.getByLabel('Mass', { exact: true }).fill('500');
    await page.getByRole('button', { name: 'Put this into the sheet' }).click();
    await page.getByText('Written into B3:D6.').waitFor();
    expect(await contents(page)).toMatchObject({
      B4: 'Mass',
      C4: 500,
      D4: 'kg',
      C5: 0.65,
      C6: '=POWDER.DRYMASS(C4,C5)',
    });
  });

  it('writes nothing while an input is refused: its sentence stands at the field, which takes the focus', async () => {
    const page = await open();
    await choose(page, 'DRYMASS');
    const moisture = page.getByLabel('Moisture', { exact: true });
    await moisture.fill('65');
    await page.getByText(/^Moisture must be a fraction from 0 to 0\.999, but 65 was given\./).waitFor();
    await page.getByRole('button', { name: 'Put this into the sheet' }).click();
    await page.getByText('Nothing was written: correct the marked input first.').waitFor();
    expect(await moisture.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await moisture.getAttribute('aria-invalid')).toBe('true');
    expect(await contents(page)).toEqual({});
  });

  it('overwrites nothing unasked, and everything in the way once told to', async () => {
    const page = await open();
    await page.evaluate(() => window.book.sheets.get('Sheet1')?.contents.set('1,1', 'mine'));
    await choose(page, 'DRYMASS');
    await page.getByRole('button', { name: 'Put this into the sheet' }).click();
    await page.getByText('A1:C4 is not empty: something stands in B2. Nothing was written.').waitFor();
    expect(await contents(page)).toEqual({ B2: 'mine' });
    await page.getByRole('button', { name: 'Write anyway' }).click();
    await page.getByText('Written into A1:C4.').waitFor();
    expect(await contents(page)).toMatchObject({ B2: 1000 });
  });

  it('says where an answer of several cells will spill, and keeps the place free', async () => {
    const page = await open();
    await choose(page, 'LADDERFIT');
    const said = await page.getByText('cells to the right of the inputs').first().textContent();
    const rows = Number(/The answer spills over (\d+) × 2 cells/.exec(said ?? '')?.[1]);
    expect(rows).toBe(rowsOf(ladderFit));
    await page.getByRole('button', { name: 'Put this into the sheet' }).click();
    const written = await page.getByText('Written into A1:E').textContent();
    // Below the title and the line of headings of the block.
    expect(Number(/A1:E(\d+)\./.exec(written ?? '')?.[1])).toBeGreaterThan(rows);
  });

  it('shows the selected cell, what its error means, and the way to the function that it calls', async () => {
    const page = await open();
    await page.evaluate(() => {
      const sheet = window.book.sheets.get('Sheet1');
      sheet?.contents.set('4,1', '=POWDER.DRYMASS(100,65)');
      sheet?.results.set('4,1', '#VALUE!');
      return window.book.select(4, 1);
    });
    const region = page.getByRole('region', { name: 'Selected cell' });
    await region.getByText('B5').waitFor();
    expect(await region.locator('[aria-live="polite"]').textContent()).toContain('An input was refused.');
    await region.getByRole('button', { name: 'Explain POWDER.DRYMASS' }).click();
    await page.getByRole('article').getByRole('heading', { name: 'POWDER.DRYMASS' }).waitFor();
  });

  it('inserts a starter sheet as a new tab', async () => {
    const page = await open();
    await page.getByRole('tab', { name: 'Sheets' }).click();
    await page.getByRole('button', { name: 'Insert Dosing' }).click();
    await page.getByText('The sheet Dosing was inserted.').waitFor();
    expect(await page.evaluate(() => [...window.book.sheets.keys()])).toEqual(['Sheet1', 'Dosing']);
  });

  it('says in a sentence what keeps Excel from writing, and loses nothing that was typed', async () => {
    const page = await open();
    await choose(page, 'DRYMASS');
    await page.getByLabel('Mass', { exact: true }).fill('777');
    await page.evaluate(() => {
      window.book.editing = true;
    });
    await page.getByRole('button', { name: 'Put this into the sheet' }).click();
    await page.getByText('A cell is being edited: finish the entry, then try again.').waitFor();
    expect(await page.getByLabel('Mass', { exact: true }).inputValue()).toBe('777');
  });

  it('speaks German and reads a decimal comma where Excel does', async () => {
    const page = await open({ locale: 'de-DE' });
    await page.getByRole('searchbox').fill('Standzeit');
    await page.getByText('Wie lange hält ein Lauf (Standzeit), und was beendet ihn?').waitFor();
    await page.getByRole('searchbox').fill('');
    await choose(page, 'DRYMASS');
    await page.getByText('Trockenmasse in einem Pulver bekannter Feuchte.').waitFor();
    const mass = page.getByLabel('Masse', { exact: true });
    await mass.fill('1.200,5');
    await page.getByText('=POWDER.DRYMASS(1200,5;0,65)').waitFor();
    await mass.fill('1.2');
    await page.getByText('1.2 ist hier keine Zahl; das Dezimalzeichen ist „,“. Schreiben Sie 1,2').waitFor();
    expect(await page.evaluate(() => document.documentElement.lang)).toBe('de');
  });
});
