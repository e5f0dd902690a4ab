import { afterEach, describe, expect, it } from 'vitest';
import { starterSheets } from '../../src/sheets/index.js';
import type { StarterSheet } from '../../src/sheets/sheet.js';
import type { Block } from '../../taskpane/host/host.js';
import { NotEmpty } from '../../taskpane/host/refusal.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { insertStarter } from '../../taskpane/workbook/grid/sheets.js';
import { fitted, sheetData } from '../../taskpane/workbook/grid/workbookData.js';
import { writeBlock } from '../../taskpane/workbook/grid/write.js';
import { said } from '../pane/said.js';
import { type Calculated, calculateCells } from './headless.js';

let sheet: Calculated;
afterEach(() => sheet.dispose());

const tried = () => said((async () => writeBlock(sheet.grid, block, false))());

const block: Block = {
  rows: [
    [{ text: '=not a formula', style: 'title' }],
    [
      { text: 'Mass', style: 'label' },
      { number: 100, style: 'input' },
    ],
    [
      { text: 'Moisture', style: 'label' },
      { number: 0.65, format: '0.0 %', style: 'input' },
    ],
    [{}, { formula: (at) => `=POWDER.DRYMASS(${at(1, 1)},${at(2, 1)})`, style: 'result' }],
  ],
};
const settled = () => sheet.grid.api.getFormula().onCalculationResultApplied(10_000);

describe('a block written at the selection', () => {
  it('calculates with addresses of its own place, and keeps text that looks like a formula', async () => {
    sheet = await calculateCells([['first']]);
    workbookOf(sheet.grid).getActiveSheet().getRange('C5').activate();
    expect(writeBlock(sheet.grid, block, false)).toEqual({ address: 'C5:D8' });
    await settled();
    expect(sheet.at('C5')).toEqual({ sheet: 'Sheet 1', address: 'C5', value: '=not a formula' });
    expect(sheet.at('D8')).toMatchObject({ formula: '=POWDER.DRYMASS(D6,D7)', value: 35 });
  });

  it('is refused where it would write over something, and writes nothing', async () => {
    sheet = await calculateCells([[], [], ['', 'mine']]);
    workbookOf(sheet.grid).getActiveSheet().getRange('A1').activate();
    expect(() => writeBlock(sheet.grid, block, false)).toThrow(NotEmpty);
    expect(await tried()).toBe('A1:B4 is not empty: something stands in B3. Nothing was written.');
    expect(sheet.at('A2').value).toBeNull();
    expect(sheet.at('B3').value).toBe('mine');
  });

  it('is refused over an answer that spilled there', async () => {
    sheet = await calculateCells([
      ['=POWDER.DRYMASS(D1:D3,0.1)', '', '', 1],
      ['', '', '', 2],
      ['', '', '', 3],
    ]);
    workbookOf(sheet.grid).getActiveSheet().getRange('A2').activate();
    expect(await tried()).toContain('something stands in A2');
  });

  it('writes over everything when told to, and one undo brings it all back', async () => {
    sheet = await calculateCells([['mine'], [], ['', 'mine too']]);
    workbookOf(sheet.grid).getActiveSheet().getRange('A1').activate();
    writeBlock(sheet.grid, block, true);
    await settled();
    expect(sheet.at('B4').value).toBe(35);
    workbookOf(sheet.grid).undo();
    expect([sheet.at('A1').value, sheet.at('B3').value, sheet.at('A2').value]).toEqual(['mine', 'mine too', null]);
    expect(sheet.at('B4').formula).toBeUndefined();
  });

  it('lets the sheet grow where it ends, and one undo takes that back too', async () => {
    sheet = await calculateCells([['first']]);
    const shown = workbookOf(sheet.grid).getActiveSheet();
    const rows = shown.getMaxRows();
    shown.getRange(rows - 2, 0).activate();
    expect(await tried()).toBeUndefined();
    expect(shown.getMaxRows()).toBe(rows + 2);
    workbookOf(sheet.grid).undo();
    expect(shown.getMaxRows()).toBe(rows);
  });

  it('is refused where no sheet reaches', async () => {
    sheet = await calculateCells([['first']]);
    const shown = workbookOf(sheet.grid).getActiveSheet();
    shown.setRowCount(100_000);
    shown.getRange(99_998, 0).activate();
    expect(await tried()).toContain('do not fit');
  });
});

describe('a starter sheet that is inserted', () => {
  it('gets a name of its own and calculates', async () => {
    sheet = await calculateCells([['first']]);
    const [starter] = starterSheets;
    if (!starter) throw new Error('There is no starter sheet.');
    insertStarter(sheet.grid, starter);
    insertStarter(sheet.grid, starter);
    await settled();
    const sheets = workbookOf(sheet.grid).getSheets();
    expect(sheets.map((one) => one.getSheetName())).toEqual(['Sheet 1', starter.name, `${starter.name} 2`]);
    const cost = starter.names.newDose ?? '';
    expect(sheets.slice(1).map((one) => Number(one.getRange(cost).getRawValue()) > 0)).toEqual([true, true]);
  });

  it('keeps its labels in view where that leaves its figures the larger part', () => {
    const wide = { ...starterSheets[0], widths: [40, 10, 10], headerRows: 4, labelColumns: 1 } as StarterSheet;
    const frozen = (room: number) => sheetData(fitted(wide, room), 'one').freeze;
    expect(frozen(700)).toEqual({ xSplit: 1, ySplit: 4, startRow: 4, startColumn: 1 });
    expect(frozen(600)).toEqual({ xSplit: 0, ySplit: 4, startRow: 4, startColumn: -1 });
    expect(sheetData({ ...wide, headerRows: 0, labelColumns: 0 }, 'one').freeze).toBeUndefined();
  });
});
