import { afterEach, describe, expect, it } from 'vitest';
import {
  ICommandService,
  IUniverInstanceService,
  RedoCommand,
  UndoCommand,
} from '../../taskpane/workbook/engine/core.js';
import { servicesOf } from '../../taskpane/workbook/engine/services.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { type Calculated, calculateCells } from './headless.js';

let book: Calculated;
afterEach(() => book.dispose());

const PLACES = ['A1', 'B1', 'C1', 'D1', 'E1'];
const shown = () => PLACES.map((place) => book.at(place).value);
const GONE = ['#REF!', '#REF!', '#REF!', 'none', '#REF!'];

/** One sheet that reads from another, which holds 21 in its first cell and as many more cells as said. */
async function reading(more: number) {
  book = await calculateCells([
    ['=Feed!A1*2', '=SUM(Feed!A1:A3)', '=A1+1', '=IFERROR(Feed!A1,"none")', '=POWDER.DRYMASS(Feed!A1,0.5)'],
  ]);
  const workbook = workbookOf(book.grid);
  servicesOf(book.grid.univer).get(IUniverInstanceService).focusUnit(workbook.getId());
  const feed = workbook.insertSheet('Feed');
  feed.getRange('A1').setValue(21);
  if (more > 0)
    feed
      .getRange(0, 1, 1000, more / 1000)
      .setValues(Array.from({ length: 1000 }, (_, row) => Array(more / 1000).fill(row)));
  await expect.poll(shown).toEqual([42, 21, 43, 21, 10.5]);
  return {
    workbook,
    feed,
    run: (id: string) => servicesOf(book.grid.univer).get(ICommandService).executeCommand(id),
  };
}

describe('a sheet that others read', () => {
  it.each([0, 7000])(
    'shows as #REF! when it is deleted, and comes back with its figures: %d cells more',
    async (more) => {
      const { workbook, feed, run } = await reading(more);
      workbook.deleteSheet(feed.getSheetId());
      await expect.poll(shown).toEqual(GONE);
      for (const _ of ['once', 'again']) {
        await run(UndoCommand.id);
        await expect.poll(shown).toEqual([42, 21, 43, 21, 10.5]);
        expect(workbook.getSheets()).toHaveLength(2);
        await run(RedoCommand.id);
        await expect.poll(shown).toEqual(GONE);
        expect(workbook.getSheets()).toHaveLength(1);
      }
    },
  );

  it('is followed when it is renamed, hidden and when rows and columns of it go', async () => {
    const { feed } = await reading(0);
    feed.setName('Rohware');
    await book.enter('C1', '=A1+2');
    expect(shown()).toEqual([42, 21, 44, 21, 10.5]);
    feed.hideSheet();
    feed.getRange('A1').setValue(22);
    await expect.poll(shown).toEqual([44, 22, 46, 22, 11]);
    feed.showSheet();
    feed.insertRowBefore(0);
    feed.getRange('A2').setValue(23);
    await expect.poll(shown).toEqual([46, 23, 48, 23, 11.5]);
    feed.deleteRow(1);
    await expect.poll(() => shown()[0]).toBe('#REF!');
  });
});
