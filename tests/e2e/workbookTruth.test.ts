import { describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import type { FactKind } from '../exchange/facts/fact.js';
import { factsIn } from '../exchange/facts/workbook.js';
import { CORPUS } from '../exchange/made/index.js';
import { bytesOfMade, type Made } from '../exchange/make.js';
import { partsOf, rows, zipped } from '../workbook/xlsx/handMade.js';
import { openFile, savedFile } from './files.js';
import { eachOnOwnSheet, type OpenWorkbook, paste } from './workbookPage.js';

let workbook: OpenWorkbook;
eachOnOwnSheet((opened) => {
  workbook = opened;
});

const { steps, tabs } = en.workbook;
const shows = (text: string) => expect.poll(workbook.selected).toContain(text);
const press = (name: string) => workbook.page.getByRole('button', { name, exact: true }).click();

describe('a formula that is typed', () => {
  it.each([30, 90, 200])('is entered as it was typed, at %d ms a key', async (delay) => {
    for (const formula of ['=NPV(0.1,1)', '=SUM(1,2)', '=AVERAGE(3)', '=POWDER.DRYMASS(100,0.5)']) {
      await workbook.go('B2');
      await workbook.page.keyboard.type(formula, { delay });
      await workbook.page.keyboard.press('Enter');
      await workbook.go('B2');
      await shows(formula);
    }
  });

  /** The list has closed, and the page's own timer after it has put the cursor behind the name: 30 ms, by the page's clock. */
  const taken = async (name: string) => {
    await inList(name).waitFor({ state: 'hidden' });
    await workbook.page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 60)));
  };
  const inList = (name: string) => workbook.page.locator('li', { hasText: new RegExp(`^${name}[A-Z][a-z]`) });

  it.each([
    ['Tab takes the first', '=NP', 'NPV', ['Tab'], '=NPER(0.1,1)'],
    ['Enter takes one that was chosen by an arrow', '=NP', 'NPV', ['ArrowDown', 'Enter'], '=NPV(0.1,1)'],
    ['Enter alone takes none', '=SU', 'SUM', ['Enter'], '=SU'],
    ['one of ours is taken like any other', '=POWDER.DRYM', 'POWDER.DRYMASS', ['Tab'], '=POWDER.DRYMASS(0.1,1)'],
  ])('is completed on purpose alone: %s', async (_, typed, listed, keys, formula) => {
    await workbook.go('B2');
    await workbook.page.keyboard.type(typed, { delay: 90 });
    await inList(listed).waitFor();
    for (const key of keys) await workbook.page.keyboard.press(key);
    await taken(listed);
    if (formula.includes('(')) await workbook.page.keyboard.type('0.1,1)', { delay: 90 });
    await workbook.page.keyboard.press('Enter');
    await workbook.go('B2');
    await shows(`Formula${formula}Value`);
  });

  it('is completed by a click', async () => {
    await workbook.go('B2');
    await workbook.page.keyboard.type('=NP', { delay: 90 });
    await inList('NPV').click();
    await taken('NPV');
    await workbook.page.keyboard.type('0.1,1)', { delay: 90 });
    await workbook.page.keyboard.press('Enter');
    await workbook.go('B2');
    await shows('Formula=NPV(0.1,1)Value');
  });

  it('shows a day as one where a formula of a file stood that has no format', async () => {
    await openFile(workbook.page, 'a.xlsx', zipped(partsOf({ sheets: [rows('<c r="A1"><f>1+1</f><v>2</v></c>')] })));
    await workbook.saved();
    await workbook.enter('A1', '=TODAY()');
    await shows('=TODAY()');
    const formats = async () => {
      const { bytes } = await savedFile(workbook.page);
      const found = factsIn(bytes).filter(({ kind }) => kind === 'number format');
      return found.map(({ where, what }) => `${where}: ${what}`);
    };
    // The format follows the entry.
    await expect.poll(formats, { timeout: 20_000 }).toEqual([expect.stringMatching(/A1: .*y/)]);
  });
});

describe('pasted markup with marks of a copy that nobody made', () => {
  const forged = (inside: string) =>
    `<table data-copy-id="forged" style="color:red"><tr><td>${inside}</td></tr></table>`;

  it('is read as the text that comes with it, and not at all without one', async () => {
    await workbook.go('B2');
    await paste(workbook.page, '5-10', forged('99'));
    await shows('Value5-10');
    await workbook.go('B4');
    await paste(workbook.page, '', forged('99'));
    await workbook.enter('B5', '=B4&"nothing"');
    await shows('Valuenothing');
  });
});

describe('the Delete key', () => {
  const RULES: readonly FactKind[] = ['rule for entries', 'note', 'chart', 'conditional format'];

  it.each(['rules for entries', 'charts', 'notes and links'])(
    'empties cells and leaves all that is said of them: %s',
    async (name) => {
      const bytes = bytesOfMade(CORPUS[name] as Made);
      await openFile(workbook.page, 'a.xlsx', bytes);
      const told = async () => {
        const { bytes: saved } = await savedFile(workbook.page);
        return factsIn(saved).filter(({ kind }) => [...RULES, 'value'].includes(kind));
      };
      const before = await told();
      await workbook.go('A1');
      // The table around the cell, then the whole sheet.
      for (const key of ['Control+a', 'Control+a', 'Delete']) await workbook.page.keyboard.press(key);
      await shows('blank');
      const after = await told();
      const rules = (facts: typeof before) => facts.filter(({ kind }) => kind !== 'value');
      expect(rules(before).length).toBeGreaterThan(1);
      expect(rules(after)).toEqual(rules(before));
      const [shown] = (await workbook.tabs()) as [string];
      expect(after.filter(({ kind, where }) => kind === 'value' && where.startsWith(`${shown}!`))).toEqual([]);
    },
  );
});

describe('circular references in an opened file', () => {
  it('are errors whatever the file says of them, and the check names them', async () => {
    const cells =
      '<c r="A1"><f>B1+1</f><v>1</v></c><c r="B1"><f>A1+1</f><v>2</v></c><c r="C1"><f>SUM(1,2)</f><v>0</v></c>';
    await openFile(workbook.page, 'a.xlsx', zipped(partsOf({ sheets: [rows(cells)] })));
    for (const [cell, value] of [
      ['A1', '#CYCLE!'],
      ['B1', '#CYCLE!'],
      ['C1', '3'],
    ] as const) {
      await workbook.go(cell);
      await shows(`Value${value}`);
    }
    const { page } = workbook;
    await page.getByRole('tab', { name: 'Check' }).click();
    await page.getByRole('button', { name: 'Check now' }).click();
    const panel = page.getByRole('tabpanel', { name: 'Check' });
    await panel.getByText(/^POWDER formulas checked: /).waitFor();
    expect(await panel.textContent()).toMatch(/Circular|#CYCLE!/i);
    expect(await panel.getByRole('button', { name: /A1|B1/ }).count()).toBeGreaterThan(0);
  });
});

describe('figures that are read elsewhere', () => {
  it('stay right where their sheet is moved, where columns before and among them go, and by Undo', async () => {
    const [...others] = await workbook.tabs();
    const read = others.pop() as string;
    for (const [cell, entry] of [
      ['A1', '1'],
      ['B1', '20'],
      ['C1', '300'],
      ['D1', '=SUM(A1:C1)'],
    ] as const)
      await workbook.enter(cell, entry);
    await workbook.addSheet();
    const reads = (await workbook.tabs()).at(-1) as string;
    await workbook.enter('A1', `='${read}'!D1*2`);
    await workbook.enter('A2', `='${read}'!B1`);
    await workbook.enter('A3', `='${read}'!C1`);
    const all = async (...values: readonly string[]) => {
      await workbook.show(reads);
      for (const [n, value] of values.entries()) {
        await workbook.go(`A${n + 1}`);
        await shows(`Value${value}`);
      }
    };
    await all('642', '20', '300');
    await workbook.show(read);
    await workbook.page.locator('.workbook-more summary').click();
    await press(tabs.left);
    const last = others.pop() as string;
    await expect.poll(workbook.tabs).toEqual([...others, read, last, reads]);
    await all('642', '20', '300');
    await workbook.show(read);
    await workbook.go('B1');
    const corner = await workbook.page.locator('[id^="univer-sheet-main-canvas"]').boundingBox();
    await workbook.page.mouse.click((corner?.x ?? 0) + 178, (corner?.y ?? 0) + 10, { button: 'right' });
    await workbook.page.getByText('Delete these columns').click();
    await all('602', '#REF!', '300');
    await press(steps.back);
    await all('642', '20', '300');
  });
});
