import { afterEach, expect, it, onTestFinished } from 'vitest';
import { ICommandService, IUniverInstanceService, UndoCommand } from '../../taskpane/workbook/engine/core.js';
import { servicesOf } from '../../taskpane/workbook/engine/services.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { bareEngine } from './bareEngine.js';
import { type Calculated, calculateCells } from './headless.js';

let book: Calculated;
afterEach(() => book?.dispose());

const shows = (...values: readonly unknown[]) =>
  expect.poll(() => ['A1', 'B1', 'C1'].map((place) => book.at(place).value)).toEqual(values);

it('the engine without our mends still keeps the figure of a name that means something else by now: renamed.ts', async () => {
  const engine = await bareEngine([['=dose*2'], [5], [9]]);
  onTestFinished(() => engine.univer.dispose());
  servicesOf(engine.univer).get(IUniverInstanceService).focusUnit(engine.workbook.getId());
  engine.workbook.insertDefinedName('dose', "'Sheet 1'!$A$2");
  await engine.settled();
  const before = engine.at('A1');
  engine.workbook.getDefinedName('dose')?.setRef("'Sheet 1'!$A$3");
  await engine.settled();
  expect([before, engine.at('A1')]).not.toEqual([10, 18]);
});

it('formulas follow what their names mean: defined later, moved, gone with their sheet and back again', async () => {
  book = await calculateCells([['=dose*2', '=SUM(DOSE,1)', '=IFERROR(dose,"none")'], [5]]);
  const workbook = workbookOf(book.grid);
  const injector = servicesOf(book.grid.univer);
  injector.get(IUniverInstanceService).focusUnit(workbook.getId());
  const feed = workbook.insertSheet('Feed');
  feed.getRange('A1').setValue(21);
  await shows('#NAME?', '#NAME?', 'none');
  workbook.insertDefinedName('dose', 'Feed!$A$1');
  await shows(42, 22, 21);
  workbook.getDefinedName('dose')?.setRef("'Sheet 1'!$A$2");
  await shows(10, 6, 5);
  workbook.getDefinedName('dose')?.setFormula('3');
  await shows(6, 4, 3);
  workbook.getDefinedName('dose')?.setRef('Feed!$A$1');
  await shows(42, 22, 21);
  workbook.deleteSheet(feed.getSheetId());
  await shows('#REF!', '#REF!', 'none');
  await injector.get(ICommandService).executeCommand(UndoCommand.id);
  await shows(42, 22, 21);
});
