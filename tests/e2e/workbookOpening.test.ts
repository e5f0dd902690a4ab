import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { partsOf, rows, type TextParts, words, zipped } from '../workbook/xlsx/handMade.js';
import { gridReady, openWorkbook } from './workbookPage.js';

let workbook: Awaited<ReturnType<typeof openWorkbook>>;
beforeEach(async () => {
  workbook = await openWorkbook();
});
afterEach(() => workbook.close());

const text = (inside: string) => `<c t="inlineStr"><is><t>${inside}</t></is></c>`;

const plan = partsOf({
  sheets: [
    rows(
      `${text('Powder as delivered')}<c><v>200</v></c>`,
      `${text('Dry powder')}<c><f>_xldudf_POWDER_DRYMASS(B1,share)</f><v>1</v></c>`,
      text('=1+1'),
      text('&lt;img src=x onerror=alert(1)&gt;'),
    ),
    rows('<c><f>Plan!B2*2</f></c>'),
  ],
  names: ['Plan', "The year's &lt;b&gt;figures"],
  after: '<definedNames><definedName name="share">0.25</definedName></definedNames>',
  more: { 'xl/charts/chart1.xml': '<chart/>' },
});

const field = () => workbook.page.locator('input[type="file"]');
const choose = (name: string, buffer: Uint8Array) =>
  field().setInputFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(buffer) });

/** Answers the question with its yes, which opens the page again. */
async function agree(answer: string) {
  const left = workbook.page.waitForEvent('load');
  await workbook.confirm(answer);
  await left;
  await gridReady(workbook.page);
}

async function open(parts: TextParts) {
  await choose('Plan 2026.xlsx', zipped(parts));
  await agree(words.confirm);
}

describe('opening an .xlsx file', () => {
  it('puts its sheets in the place of the workbook, calculated, and says what is not there', async () => {
    await open(plan);
    expect(await workbook.tabs()).toEqual(['Plan', "The year's <b>figures"]);
    expect(await workbook.notice()).toContain(`${words.opened('Plan 2026.xlsx')} ${words.leftOut(words.parts.charts)}`);
    await workbook.go('B2');
    await expect.poll(() => workbook.selected()).toContain('150');
    await workbook.show("The year's <b>figures");
    await workbook.go('A1');
    await expect.poll(() => workbook.selected()).toContain('300');
  });

  it('shows the sheet first that the file shows first, and takes one cell of a range where the file does', async () => {
    const cells = [4, 9].map((value) => `<c><v>${value}</v></c><c><f>SQRT(A1:A2)*2^-TRUE</f><v>0</v></c>`);
    await open(
      partsOf({
        sheets: [rows(), rows(...cells)],
        names: ['Before', 'Figures'],
        before: '<bookViews><workbookView activeTab="1"/></bookViews>',
      }),
    );
    const tab = workbook.page.locator('[aria-current="true"]');
    await expect.poll(() => tab.textContent()).toBe('Figures');
    await workbook.go('B2');
    await expect.poll(() => workbook.selected()).toContain('1.5');
    await expect.poll(() => workbook.selected()).toContain('=SQRT(SINGLE(A1:A2))*2^-TRUE');
  });

  it('keeps text as text, that of a formula or of a page too', async () => {
    await open(plan);
    await workbook.go('A3');
    await expect.poll(() => workbook.selected()).toContain('=1+1');
    await workbook.go('A4');
    await expect.poll(() => workbook.selected()).toContain('<img src=x onerror=alert(1)>');
    expect(await workbook.page.locator('img[src="x"]').count()).toBe(0);
  });

  it('asks first, with the name of the file, and can be called off', async () => {
    await workbook.saved();
    await choose('Plan 2026.xlsx', zipped(plan));
    const question = workbook.page.getByRole('dialog', { name: words.title('Plan 2026.xlsx') });
    await question.waitFor();
    expect(await question.textContent()).toContain(words.leftOut(words.parts.charts));
    expect(await workbook.violations()).toEqual([]);
    await workbook.confirm(en.workbook.cancel);
    await question.waitFor({ state: 'detached' });
    expect(await workbook.tabs()).toEqual(['Dosing']);
    // The same file can be chosen again.
    await choose('Plan 2026.xlsx', zipped(plan));
    await question.waitFor();
  });

  it('asks the same where the file is dropped onto the page', async () => {
    await workbook.saved();
    await workbook.page.evaluate(
      (bytes) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([new Uint8Array(bytes)], 'dropped.xlsx'));
        document
          .querySelector('canvas')
          ?.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
      },
      [...zipped(plan)],
    );
    await workbook.page.getByRole('dialog', { name: words.title('dropped.xlsx') }).waitFor();
  });

  it('keeps the workbook from before, which “Bring back” shows again', async () => {
    await workbook.addSheet();
    await workbook.enter('B2', 'mine');
    await workbook.saved();
    await open(plan);
    await workbook.saved();
    await workbook.page.getByRole('button', { name: 'Bring back' }).click();
    await agree('Bring back');
    expect(await workbook.tabs()).toEqual(['Dosing', 'Sheet 1']);
    await workbook.show('Sheet 1');
    await workbook.go('B2');
    await expect.poll(() => workbook.selected()).toContain('mine');
    expect(await workbook.notice()).toBe('');
  });

  it('leaves everything as it is where the file is broken, and says why', async () => {
    await workbook.saved();
    const whole = zipped(plan);
    await choose('half.xlsx', whole.subarray(0, whole.length / 2));
    await expect.poll(() => workbook.notice()).toContain(words.refused('half.xlsx', words.noZip));
    await choose('harm.xlsx', zipped({ ...plan, 'xl/workbook.xml': '<!DOCTYPE a><workbook/>' }));
    await expect.poll(() => workbook.notice()).toContain(words.refused('harm.xlsx', words.doctype));
    await choose('torn.xlsx', zipped({ ...plan, 'xl/worksheets/sheet1.xml': '<worksheet><sheetData>' }));
    await expect
      .poll(() => workbook.notice())
      .toContain(words.refused('torn.xlsx', words.damagedPart('xl/worksheets/sheet1.xml')));
    expect(await workbook.page.getByRole('dialog').count()).toBe(0);
    expect(await workbook.tabs()).toEqual(['Dosing']);
  });

  it('leaves everything as it is where the browser refuses storage', async () => {
    await workbook.page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('refused', 'SecurityError');
      };
    });
    await workbook.reload();
    await workbook.addSheet();
    await choose('Plan 2026.xlsx', zipped(plan));
    await workbook.confirm(words.confirm);
    await expect.poll(() => workbook.notice()).toContain(words.storage);
    expect(await workbook.tabs()).toEqual(['Dosing', 'Sheet 1']);
  });

  it('lasts: the opened workbook is saved like any other', async () => {
    await open(plan);
    await workbook.enter('B1', '400');
    await expect.poll(() => workbook.selected()).toContain('400');
    await workbook.saved();
    await workbook.reload();
    await workbook.go('B2');
    await expect.poll(() => workbook.selected()).toContain('300');
  });
});

describe('a large file', () => {
  /** A hundred thousand formulas: several seconds of reading. */
  const line = Array.from({ length: 20 }, (_, column) => `<c><f>ROW()*${column}+1</f><v>1</v></c>`).join('');
  const large = () =>
    zipped(partsOf({ sheets: [rows(...Array.from({ length: 5000 }, () => line))], names: ['Large'] }));

  it('is read while the page answers, and reading it can be stopped', async () => {
    const { page } = workbook;
    await workbook.saved();
    await choose('large.xlsx', large());
    await page.getByRole('button', { name: words.stop }).click();
    await page.getByRole('button', { name: words.button }).waitFor();
    await choose('large.xlsx', large());
    // The page takes keys and calculates while the file is read.
    await workbook.addSheet();
    await workbook.enter('A1', '=40+2');
    await expect.poll(() => workbook.selected()).toContain('Value42');
    await page.getByRole('dialog', { name: words.title('large.xlsx') }).waitFor();
    await workbook.confirm(en.workbook.cancel);
    expect(await workbook.tabs()).toEqual(['Dosing', 'Sheet 1']);
    expect(await workbook.notice()).toBe('');
  });
});
