import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { gridReady, openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook();
});
afterEach(() => workbook.close());

/** Puts something else in the place of the saved workbook, as a fault of the browser might. */
function damage(saved: unknown) {
  return workbook.page.evaluate(
    (value) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('powderbook');
        opening.onerror = failed;
        opening.onsuccess = () => {
          const change = opening.result.transaction('workbooks', 'readwrite');
          change.objectStore('workbooks').put(value, 'workbook');
          change.oncomplete = () => done();
        };
      }),
    saved,
  );
}

const keys = () =>
  workbook.page.evaluate(
    () =>
      new Promise<string[]>((done) => {
        const opening = indexedDB.open('powderbook');
        opening.onsuccess = () => {
          const request = opening.result.transaction('workbooks').objectStore('workbooks').getAllKeys();
          request.onsuccess = () => done(request.result.map(String));
        };
      }),
  );

describe('the saved workbook', () => {
  it('is there again after a reload', async () => {
    await workbook.addSheet();
    await workbook.enter('B2', 'mine');
    await workbook.saved();
    await workbook.reload();
    expect(await workbook.tabs()).toEqual(['Dosing', 'Sheet 1']);
    await workbook.show('Sheet 1');
    await workbook.go('B2');
    await expect.poll(() => workbook.selected()).toContain('mine');
  });

  it('opens again with the sheet that was shown last', async () => {
    await workbook.addSheet();
    await workbook.enter('B2', 'here');
    await workbook.saved();
    await workbook.reload();
    await workbook.go('B2');
    await expect.poll(() => workbook.selected()).toMatch(/here$/);
    expect(await workbook.page.locator('.workbook-tabs [aria-current]').textContent()).toBe('Sheet 1');
  });

  it('has what was typed just before the page was left', async () => {
    await workbook.addSheet();
    await workbook.enter('B2', 'late');
    await workbook.reload();
    await workbook.show('Sheet 1');
    await workbook.go('B2');
    await expect.poll(() => workbook.selected()).toContain('late');
  });

  it('gives way to a new one after a question, and can be brought back', async () => {
    await workbook.addSheet();
    await workbook.enter('B2', 'mine');
    await workbook.saved();
    await workbook.page.getByRole('button', { name: 'Start afresh' }).click();
    await workbook.confirm('Cancel');
    expect(await workbook.tabs()).toHaveLength(2);
    await workbook.page.getByRole('button', { name: 'Start afresh' }).click();
    const left = workbook.page.waitForEvent('load');
    await workbook.confirm('Start afresh');
    await left;
    await gridReady(workbook.page);
    expect(await workbook.tabs()).toEqual(['Dosing']);
    await workbook.saved();
    const leftAgain = workbook.page.waitForEvent('load');
    await workbook.page.getByRole('button', { name: 'Bring back' }).click();
    await workbook.confirm('Bring back');
    await leftAgain;
    await gridReady(workbook.page);
    expect(await workbook.tabs()).toEqual(['Dosing', 'Sheet 1']);
    await workbook.show('Sheet 1');
    await workbook.go('B2');
    await expect.poll(() => workbook.selected()).toContain('mine');
  });

  it('is exchanged with the one before in one step, or a page that dies between two would lose one of them', async () => {
    await workbook.addSheet();
    await workbook.enter('A1', 'mine');
    const exchange = async (name: string) => {
      await workbook.saved();
      const left = workbook.page.waitForEvent('load', { timeout: 10_000 });
      // The storage takes one more change from this page and then nothing, as if the page had died.
      await workbook.page.evaluate(() => {
        const { transaction } = IDBDatabase.prototype;
        let changes = 0;
        IDBDatabase.prototype.transaction = function (names, mode, options) {
          if (mode === 'readwrite' && ++changes > 1) throw new DOMException('gone', 'InvalidStateError');
          return transaction.call(this, names, mode, options);
        };
      });
      await workbook.page.getByRole('button', { name }).click();
      await workbook.confirm(name);
      await left;
      await gridReady(workbook.page);
    };
    await exchange('Start afresh');
    expect(await workbook.tabs()).toEqual(['Dosing']);
    await exchange('Bring back');
    expect(await workbook.tabs()).toEqual(['Dosing', 'Sheet 1']);
    await exchange('Bring back');
    expect(await workbook.tabs()).toEqual(['Dosing']);
    await exchange('Bring back');
    expect(await workbook.tabs()).toEqual(['Dosing', 'Sheet 1']);
  });

  it('is kept aside when it cannot be read, and the user is told', async () => {
    await workbook.saved();
    await damage({ saved: 'once', workbook: 'nothing of use' });
    await workbook.reload();
    expect(await workbook.notice()).toContain('The saved workbook could not be opened. It is kept in this browser');
    expect(await workbook.tabs()).toEqual(['Dosing']);
    await workbook.saved();
    expect((await keys()).filter((key) => key.startsWith('workbook set aside'))).toHaveLength(1);
  });

  it.each([
    ['a sheet of a thousand million rows', { rowCount: 1e9 }],
    ['a sheet of a million columns', { columnCount: 1e6 }],
    ['a row of no number', { cellData: { first: { 0: { v: 1 } } } }],
  ])('is kept aside where it says that it has %s', async (_, sheet) => {
    await workbook.saved();
    await damage({
      saved: 'once',
      workbook: { id: 'book', sheetOrder: ['one'], sheets: { one: { id: 'one', name: 'One', ...sheet } } },
    });
    await workbook.reload();
    expect(await workbook.notice()).toContain('It is kept in this browser');
    expect(await workbook.tabs()).toEqual(['Dosing']);
  });

  it('has what was entered last where the clock was set back meanwhile', async () => {
    await workbook.addSheet();
    await workbook.enter('B2', 'before');
    await workbook.saved();
    await workbook.page.evaluate(() => {
      const { toISOString } = Date.prototype;
      Date.prototype.toISOString = function () {
        return toISOString.call(new Date(this.getTime() - 366 * 24 * 3600 * 1000));
      };
    });
    await workbook.enter('B2', 'after');
    await workbook.reload();
    await workbook.go('B2');
    await expect.poll(() => workbook.selected()).toContain('after');
  });

  it('is not missed where the browser refuses storage: work goes on, and the page says so', async () => {
    await workbook.page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('refused', 'SecurityError');
      };
    });
    await workbook.reload();
    expect(await workbook.page.getByRole('status').first().textContent()).toContain('Not saved');
    await workbook.enter(dosing.names.presentDose as string, '90');
    await expect.poll(() => workbook.selected()).toContain('90');
  });
});
