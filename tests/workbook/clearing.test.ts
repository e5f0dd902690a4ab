import { afterEach, expect, it } from 'vitest';
import { ICommandService } from '../../taskpane/workbook/engine/core.js';
import { keepRulesOfEmptiedCells } from '../../taskpane/workbook/engine/mends/clearing.js';
import { servicesOf } from '../../taskpane/workbook/engine/services.js';
import { ClearSelectionContentCommand } from '../../taskpane/workbook/engine/sheets.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { type Calculated, calculateCells } from './headless.js';

let book: Calculated;
afterEach(() => book.dispose());

const OWN = {
  validation: { kind: 'list', of: ['a', 'b'], message: 'One of a, b.' },
  note: 'Why',
  drawn: ['0.0.across'],
};

it('A cell that is emptied keeps its rule, its note, its place in a chart and its look, one after the other', async () => {
  book = await calculateCells([[1, 2, '=A1+B1']]);
  keepRulesOfEmptiedCells(book.grid.univer);
  const sheet = workbookOf(book.grid).getActiveSheet();
  for (const place of ['A1', 'C1']) sheet.getRange(place).setValue({ custom: OWN, s: { bl: 1 } });
  const look = sheet.getSheet().getCellRaw(0, 0)?.s;
  const clear = () =>
    servicesOf(book.grid.univer)
      .get(ICommandService)
      .executeCommand(ClearSelectionContentCommand.id, { ranges: [sheet.getRange('A1:D5').getRange()] });
  for (const _ of ['once', 'again']) {
    expect(await clear()).toBe(true);
    expect(sheet.getRange('A1:C1').getValues()).toEqual([[null, null, null]]);
    for (const column of [0, 2]) {
      expect(sheet.getSheet().getCellRaw(0, column)).toMatchObject({ custom: OWN, s: look });
      expect(sheet.getSheet().getCellRaw(0, column)?.f).toBeUndefined();
    }
  }
});
