import { expect, it, onTestFinished } from 'vitest';
import { openWorkbook, paste } from './workbookPage.js';

it('The check looks through 10,000 formulas in under two seconds', async () => {
  const { page, go, addSheet, saved, close } = await openWorkbook();
  onTestFinished(close);
  await addSheet();
  await go('A1');
  const rows = Array.from({ length: 2500 }, (_, row) => {
    const [mass, moisture] = [`A${row + 1}`, `B${row + 1}`];
    const formula = `=POWDER.DRYMASS(${mass},${moisture})`;
    return [100 + row, 0.65, formula, formula, formula, formula].join('\t');
  });
  await paste(page, rows.join('\n'));
  await page.locator('[data-saving="saving"]').waitFor();
  await saved();
  await page.getByRole('tab', { name: 'Check' }).click();
  await page.getByLabel('This sheet').check();
  const panel = page.getByRole('tabpanel', { name: 'Check' });
  // From within the page: the work is over within a second or two.
  const once = () =>
    page.evaluate(async () => {
      const find = (name: string) =>
        [...document.querySelectorAll('button')].find(({ textContent }) => textContent === name);
      const until = async (name: string) => {
        while (!find(name)) await new Promise((go) => setTimeout(go, 2));
      };
      const started = performance.now();
      find('Check now')?.click();
      await until('Cancel');
      await until('Check now');
      return performance.now() - started;
    });
  const times = [await once(), await once(), await once()];
  await panel.getByText('POWDER formulas checked: 10,000.').waitFor();
  console.log(`10,000 formulas checked in ${times.map((time) => Math.round(time)).join(', ')} ms`);
  // The first time the page's own code is new to the browser, too.
  expect(Math.min(...times)).toBeLessThan(2000);
});
