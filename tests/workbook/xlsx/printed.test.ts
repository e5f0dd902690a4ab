import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it, onTestFinished } from 'vitest';
import { areaOf } from '../../../src/sheets/area.js';
import { OFFERS } from '../../../src/sheets/quotes/offers.js';
import { quotes } from '../../../src/sheets/quotes.js';
import { gridOfBook, shownFirst } from '../../../taskpane/workbook/grid/ofBook.js';
import { workbookOf } from '../../../taskpane/workbook/grid/place.js';
import { bookOfGrid } from '../../../taskpane/workbook/grid/toBook.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { calculateStarter, calculateWorkbook } from '../headless.js';
import { opened, readOf, rows, words } from './handMade.js';

const cells = rows(...[1, 2, 3, 4, 5].map((n) => `<c r="A${n}"><v>${n}</v></c>`));

async function open(given: Parameters<typeof opened>[0]) {
  const { book, leftOut } = opened(given);
  const sheet = await calculateWorkbook(gridOfBook(book));
  onTestFinished(() => sheet.dispose());
  const saved = () => writeBook(bookOfGrid(sheet.grid));
  const part = (name: string) => strFromU8(unzipSync(saved())[`xl/${name}.xml`] as Uint8Array);
  return { sheet, book, leftOut, saved, part, shown: () => workbookOf(sheet.grid).getActiveSheet() };
}

const named = (area: string, titles: string) => ({
  sheets: [cells],
  names: ['Plan, B'],
  after: `<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">${area}</definedName><definedName name="_xlnm.Print_Titles" localSheetId="0">${titles}</definedName></definedNames>`,
});
const area = "'Plan, B'!$A$2:$C$4,'Plan, B'!$E$1";

describe('the list of a starter sheet', () => {
  it('is printed down to its last filled row, however many are filled in, and its empty room is not', async () => {
    const sheet = await calculateStarter(quotes);
    onTestFinished(() => sheet.dispose());
    const printed = () => areaOf(bookOfGrid(sheet.grid).sheets[0]?.page?.areas?.at(-1) ?? '');
    const first = quotes.rows.findIndex(([cell]) => cell?.text === 'State') + 2;
    const { row, rows: before } = printed();
    expect(row + before).toBe(first + OFFERS.length);
    await sheet.enter(`B${first + 40}`, 'Gel 41');
    expect(printed()).toMatchObject({ row, rows: first + 40 - row });
  });
});

describe('what is printed of a sheet', () => {
  it('comes back with the rows and columns that are repeated, and moves with the cells', async () => {
    const { leftOut, part, shown } = await open(named(area, "'Plan, B'!$B:$C,'Plan, B'!$1:$2"));
    expect(leftOut).toEqual([]);
    const says = (areas: string, titles: string) => {
      expect(part('workbook')).toContain(`name="_xlnm.Print_Area" localSheetId="0">${areas}<`);
      expect(part('workbook')).toContain(`name="_xlnm.Print_Titles" localSheetId="0">${titles}<`);
    };
    says(area, "'Plan, B'!$B:$C,'Plan, B'!$1:$2");
    shown().insertRowsBefore(2, 3);
    says("'Plan, B'!$A$2:$C$7,'Plan, B'!$E$1", "'Plan, B'!$B:$C,'Plan, B'!$1:$2");
    shown().insertColumnsBefore(0, 1);
    says("'Plan, B'!$B$2:$D$7,'Plan, B'!$F$1", "'Plan, B'!$C:$D,'Plan, B'!$1:$2");
    shown().deleteRows(6, 1);
    says("'Plan, B'!$B$2:$D$6,'Plan, B'!$F$1", "'Plan, B'!$C:$D,'Plan, B'!$1:$2");
  });

  it('can be whole rows and whole columns', async () => {
    const whole = "'Plan, B'!$2:$4,'Plan, B'!$B:$C";
    const { leftOut, part, shown } = await open(named(whole, "'Plan, B'!$1:$1"));
    expect(leftOut).toEqual([]);
    expect(part('workbook')).toContain(`name="_xlnm.Print_Area" localSheetId="0">${whole}<`);
    shown().insertRowsBefore(2, 3);
    shown().insertColumnsBefore(0, 1);
    expect(part('workbook')).toContain(`name="_xlnm.Print_Area" localSheetId="0">'Plan, B'!$2:$7,'Plan, B'!$C:$D<`);
  });

  it('is told where the grid has no such row or column', async () => {
    const { leftOut, book } = await open(named("'Plan, B'!$A$1:$C$200000,'Plan, B'!$IW:$IX", "'Plan, B'!$1:$1"));
    expect(leftOut).toEqual([words.parts.printAreas]);
    expect(book.sheets[0]?.page).toEqual({ rows: '1:1' });
  });

  it('begins new pages where someone wants them, which move with the cells', async () => {
    const breaks = (rows: string, columns: string) =>
      `<rowBreaks count="1" manualBreakCount="1">${rows}</rowBreaks><colBreaks count="1" manualBreakCount="1">${columns}</colBreaks>`;
    const at = (id: number, max: number) => `<brk id="${id}" max="${max}" man="1"/>`;
    const given = breaks(`${at(3, 16383)}<brk id="4" max="16383"/>`, at(1, 1048575));
    const { leftOut, part, shown } = await open({ sheets: [cells + given] });
    expect(leftOut).toEqual([]);
    expect(part('worksheets/sheet1')).toContain(breaks(at(3, 16383), at(1, 1048575)));
    shown().insertRowsBefore(1, 2);
    shown().insertColumnsBefore(0, 1);
    expect(part('worksheets/sheet1')).toContain(breaks(at(5, 16383), at(2, 1048575)));
    shown().deleteRows(4, 2);
    expect(part('worksheets/sheet1')).not.toContain('rowBreaks');
  });

  it('is told where a page begins beyond the grid', async () => {
    const beyond = '<rowBreaks count="1" manualBreakCount="1"><brk id="200000" max="16383" man="1"/></rowBreaks>';
    const { leftOut, part } = await open({ sheets: [cells + beyond] });
    expect(leftOut).toEqual([words.parts.printAreas]);
    expect(part('worksheets/sheet1')).not.toContain('rowBreaks');
  });
});

describe('the sheet that a file shows first', () => {
  it('is shown first in the grid, also where sheets before it are not taken', () => {
    const { book } = opened({
      sheets: [cells, cells, cells],
      names: ['One', 'Two', 'Three'],
      before: '<bookViews><workbookView activeTab="2"/></bookViews>',
    });
    expect([book.active, shownFirst(book)]).toEqual(['Three', 'sheet-2']);
    const { active: _, ...rest } = book;
    expect(shownFirst(rest)).toBe('sheet-0');
  });
});

describe('a rule for entries', () => {
  const said = (inside: string, ...limits: readonly string[]) => {
    const ends = limits.map((one, n) => `<formula${n + 1}>${one}</formula${n + 1}>`).join('');
    return ends === '' ? `<dataValidation ${inside}/>` : `<dataValidation ${inside}>${ends}</dataValidation>`;
  };

  it.each([
    [
      'stops',
      said(
        'type="decimal" operator="between" errorStyle="stop" errorTitle="Limits" error="0 to 9" showErrorMessage="1" sqref="A1"',
        '0',
        '9',
      ),
    ],
    ['informs', said('type="list" errorStyle="information" allowBlank="1" showErrorMessage="1" sqref="A1"', '"a,b"')],
    ['says nothing', said('type="decimal" operator="greaterThanOrEqual" sqref="A1"', '0')],
    ['has one limit above', said('type="decimal" operator="lessThanOrEqual" errorStyle="warning" sqref="A1"', '5.5')],
    ['asks for one number', said('type="decimal" operator="equal" sqref="A1"', '3')],
    ['only shows a note under a title', said('promptTitle="Dose" showInputMessage="1" prompt="In g/hL" sqref="A1"')],
  ])('is in the saved file as it was: one that %s', async (_, rule) => {
    const { leftOut, saved, part } = await open({
      sheets: [`${cells}<dataValidations count="1">${rule}</dataValidations>`],
    });
    expect(leftOut).toEqual([]);
    expect(part('worksheets/sheet1')).toContain(rule.replace(/"(?=[^<]*<\/formula)/g, '&quot;'));
    expect(readOf(saved()).book.sheets[0]?.rows[0]?.[0]?.value).toBe(1);
  });
});
