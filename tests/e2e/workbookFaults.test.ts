import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { gridReady, openWorkbook, paste } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook();
});
afterEach(() => workbook.close());

const status = () => workbook.page.locator('.workbook-saving').textContent();

describe('100,000 cells pasted at once', () => {
  it('are there, are saved and are there again after a reload', async () => {
    await workbook.addSheet();
    await workbook.go('A1');
    const rows = Array.from({ length: 10_000 }, (_, row) =>
      Array.from({ length: 10 }, (__, column) => row * 10 + column).join('\t'),
    );
    const started = performance.now();
    await paste(workbook.page, rows.join('\n'));
    const took = performance.now() - started;
    console.log(`100,000 cells pasted in ${Math.round(took)} ms`);
    expect(took).toBeLessThan(20_000);
    await workbook.go('J10000');
    await expect.poll(() => workbook.selected()).toMatch(/99,999$/);
    await workbook.enter('L1', '=SUM(A1:J10000)');
    await expect.poll(() => workbook.selected(), { timeout: 20_000 }).toContain('4,999,950,000');
    await workbook.saved();
    await workbook.reload();
    await workbook.go('J10000');
    await expect.poll(() => workbook.selected()).toMatch(/99,999$/);
  });
});

describe('storage that fills up while one works', () => {
  it('is told of, nothing that was entered goes away, and the next save with room has it all', async () => {
    await workbook.addSheet();
    await workbook.saved();
    await workbook.page.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      Object.assign(window, {
        makeRoom: () => {
          IDBObjectStore.prototype.put = put;
        },
      });
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
      };
    });
    await workbook.enter('A1', 'first');
    await expect.poll(status).toBe(en.workbook.saving.failed);
    await workbook.enter('A2', 'second');
    await workbook.go('A1');
    await expect.poll(() => workbook.selected()).toContain('first');
    await workbook.page.evaluate(() => (window as unknown as { makeRoom(): void }).makeRoom());
    await workbook.enter('A3', 'third');
    await workbook.saved();
    await workbook.reload();
    for (const [cell, text] of Object.entries({ A1: 'first', A2: 'second', A3: 'third' })) {
      await workbook.go(cell);
      await expect.poll(() => workbook.selected()).toContain(text);
    }
  });
});

describe('a page that is closed in the middle of a save', () => {
  it('opens again with what was entered before it was closed', async () => {
    await workbook.addSheet();
    await workbook.enter('A1', 'before');
    await workbook.saved();
    // From here on no save comes to its end: its transaction is kept busy until the page is gone, which undoes it.
    await workbook.page.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = function (...given) {
        const request = put.apply(this, given);
        const again = () => {
          this.get('no such key').onsuccess = again;
        };
        again();
        return request;
      };
    });
    await workbook.enter('A1', 'during');
    await expect.poll(status).toBe(en.workbook.saving.saving);
    await workbook.page.waitForTimeout(1500);
    expect(await status()).toBe(en.workbook.saving.saving);
    await workbook.reload();
    await workbook.go('A1');
    await expect.poll(() => workbook.selected()).toContain('during');
    await workbook.saved();
  });

  it('opens with the new workbook after a fresh start, and the old one has its last entry', async () => {
    await workbook.addSheet();
    await workbook.go('B2');
    await workbook.page.keyboard.type('last');
    await workbook.page.keyboard.press('Enter');
    for (const { button } of [en.workbook.startAfresh, en.workbook.bringBack]) {
      const left = workbook.page.waitForEvent('framenavigated');
      await workbook.page.getByRole('button', { name: button }).click();
      await workbook.confirm(button);
      await left;
      await gridReady(workbook.page);
      await workbook.saved();
      if (button === en.workbook.startAfresh.button) expect(await workbook.tabs()).toEqual(['Dosing']);
    }
    await workbook.show('Sheet 1');
    await workbook.go('B2');
    await expect.poll(() => workbook.selected()).toContain('last');
  });
});

describe('markup in cells and names', () => {
  const harmful = '<img src=x onerror=harm()>';
  beforeEach(async () => {
    await workbook.page.evaluate(() => {
      Object.assign(window, { harm: () => Object.assign(window, { harmed: true }) });
    });
    await workbook.addSheet();
  });
  afterEach(async () => {
    expect(await workbook.page.evaluate(() => 'harmed' in window)).toBe(false);
    expect(await workbook.page.locator('img[src="x"]').count()).toBe(0);
  });

  it('stays text where it is typed and pasted', async () => {
    await workbook.enter('A1', harmful);
    await expect.poll(() => workbook.selected()).toContain(harmful);
    await workbook.go('B1');
    await paste(workbook.page, harmful, `<table><tr><td>${harmful}<script>harm()</script></td></tr></table>`);
    await workbook.go('B1');
    await expect.poll(() => workbook.selected()).toContain(harmful);
    await workbook.enter('C1', `=POWDER.SWAPDOSE(60,A1,"adsorptive")`);
    await expect.poll(() => workbook.selected()).toContain(harmful);
  });

  it('stays text in the name of a sheet, in the notices and in the check', async () => {
    const { page } = workbook;
    const rename = async (name: string) => {
      await page.getByRole('button', { name: 'Rename' }).click();
      await page.getByLabel('Name of the sheet').fill(name);
      await page.keyboard.press('Enter');
    };
    await rename(harmful);
    expect(await workbook.tabs()).toContain(harmful);
    await workbook.enter('A1', '=POWDER.DRYMASS(-1,0.5)');
    await page.getByRole('tab', { name: 'Check' }).click();
    await page.getByRole('button', { name: 'Check now' }).click();
    await page.getByText('Refused inputs (1)').waitFor();
    await workbook.addSheet();
    await rename(harmful);
    await expect.poll(() => workbook.notice()).toContain(`Another sheet is called ${harmful}.`);
    await page.getByRole('button', { name: 'Delete' }).click();
    await page.getByRole('dialog').waitFor();
  });
});
