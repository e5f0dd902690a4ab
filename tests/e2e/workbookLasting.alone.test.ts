import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { partsOf, rows, zipped } from '../workbook/xlsx/handMade.js';
import { openFile } from './files.js';
import { openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook();
});
afterEach(() => workbook.close());

/** Ten thousand million products. */
const ENDLESS = 'SUM(ROW(A1:A100000)*TRANSPOSE(ROW(A1:A100000)))';

describe('a calculation that lasts', { timeout: 150_000 }, () => {
  const { calculation } = en.workbook;
  const button = (name: string) => workbook.page.getByRole('button', { name, exact: true });
  const open = async (...lines: readonly string[]) => {
    const bytes = Buffer.from(zipped(partsOf({ sheets: [rows(...lines)], names: ['Long'] })));
    await openFile(workbook.page, 'long.xlsx', bytes);
  };

  it('says so, can be stopped, and begins again when that is chosen', async () => {
    // Each formula goes through a million cells: slow, and moving.
    const slow = '<c cm="1"><f>SUMPRODUCT(ROW(A$1:A$100000)*COLUMN(A$1:J$1))</f><v>7</v></c>';
    await open(...Array.from({ length: 20 }, () => slow));
    await workbook.page.getByText(calculation.busy.says).waitFor();
    await button(calculation.busy.button).click();
    await workbook.page.getByText(calculation.stopped.says).waitFor();
    await workbook.go('A1');
    await expect.poll(() => workbook.selected()).toContain('Value7');
    await workbook.addSheet();
    await workbook.enter('A1', '=40+2');
    expect(await workbook.selected()).not.toContain('42');
    await button(calculation.stopped.button).click();
    await expect.poll(() => workbook.selected(), { timeout: 90_000 }).toContain('Value42');
    expect(await button(calculation.stopped.button).count()).toBe(0);
  });

  it('has its endless formula named among thousands of others', async () => {
    const quick = Array.from({ length: 3000 }, (_, row) => `<c><f>${row}+1</f></c>`);
    await open(...quick, `<c cm="1"><f>${ENDLESS}</f><v>7</v></c>`, ...quick);
    await expect.poll(() => workbook.notice(), { timeout: 90_000 }).toContain(en.workbook.left.formula('Long!A3001'));
    for (const [cell, value] of [
      ['A3000', '3,000'],
      ['A3001', '7'],
      ['A3002', '1'],
    ] as const) {
      await workbook.go(cell);
      await expect.poll(() => workbook.selected()).toContain(`Value${value}`);
    }
  });
});
