import { bindAll } from '../../functions/bind.js';
import { metadata } from '../../functions/metadata.js';
import type { StarterSheet } from '../../src/sheets/sheet.js';
import type { Selection } from '../../taskpane/host/host.js';
import { UniverSheetsConditionalFormattingPlugin } from '../../taskpane/workbook/engine/conditions.js';
import {
  ICommandService,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
} from '../../taskpane/workbook/engine/core.js';
import {
  ISheetRowFilteredService,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
} from '../../taskpane/workbook/engine/formula.js';
import { beforeFirstCalculation } from '../../taskpane/workbook/engine/mends/firstCalculation.js';
import { servicesOf } from '../../taskpane/workbook/engine/services.js';
import { UniverSheetsDataValidationPlugin } from '../../taskpane/workbook/engine/validation.js';
import { FUniver } from '../../taskpane/workbook/engine/withoutPage.js';
import { answers } from '../../taskpane/workbook/formula/cellError.js';
import { registerCalculation } from '../../taskpane/workbook/formula/engine.js';
import type { Grid } from '../../taskpane/workbook/grid/boot.js';
import { cellData } from '../../taskpane/workbook/grid/cells.js';
import { filteredOutOf } from '../../taskpane/workbook/grid/filters.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { readCell } from '../../taskpane/workbook/grid/selection.js';
import { completeStarter } from '../../taskpane/workbook/grid/sheets.js';
import { blankSheet, sheetData, workbookData } from '../../taskpane/workbook/grid/workbookData.js';

type Entered = string | number;

export interface Calculated {
  readonly grid: Grid;
  /** What a cell of the first sheet shows, and the sentence behind it where it is an error. */
  at(address: string): Selection;
  /** Enters a value, or a formula from its equals sign on, and waits for what follows from it. */
  enter(address: string, content: Entered): Promise<void>;
  dispose(): void;
}

const functions = { metadata: metadata('https://localhost').functions, bound: bindAll(answers) };
const entered = (content: Entered) =>
  typeof content === 'number'
    ? { number: content }
    : content.startsWith('=')
      ? { formula: content }
      : { text: content };

async function calculated(workbook: IWorkbookData, begin: (grid: Grid) => void): Promise<Calculated> {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.ERROR,
  });
  const messages = registerCalculation(univer, functions);
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  const filteredOut = filteredOutOf(workbook);
  beforeFirstCalculation(univer, () =>
    servicesOf(univer)
      .get(ISheetRowFilteredService)
      .register((_, sheet, row) => filteredOut[sheet]?.includes(row) ?? false),
  );
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, workbook);
  const grid: Grid = { univer, api: FUniver.newAPI(univer), messages };
  begin(grid);
  // One calculation can lead to another: where an answer became smaller, what reads it follows.
  let running = 0;
  servicesOf(univer)
    .get(ICommandService)
    .onCommandExecuted(({ id, params }) => {
      if (id === SetFormulaCalculationStartMutation.id) running += 1;
      const state = (params as { functionsExecutedState?: number } | undefined)?.functionsExecutedState;
      if (id === SetFormulaCalculationNotificationMutation.id && state !== undefined) running -= 1;
    });
  const settled = async () => {
    await grid.api.getFormula().onCalculationResultApplied(300_000);
    while (running > 0) await new Promise((resolve) => setTimeout(resolve, 5));
  };
  await settled();
  const first = workbookOf(grid).getSheets()[0];
  if (!first) throw new Error('The workbook has no sheet.');
  return {
    grid,
    at(address) {
      const range = first.getRange(address);
      return readCell(grid, first, range.getRow(), range.getColumn());
    },
    async enter(address, content) {
      first.getRange(address).setValue({ v: null, f: null, ...cellData(entered(content)) });
      await settled();
    },
    dispose: () => univer.dispose(),
  };
}

/** A starter sheet, calculated by the grid's engine with the same functions, without a browser. */
export function calculateStarter(starter: StarterSheet): Promise<Calculated> {
  return calculated(workbookData(sheetData(starter, 'first')), (grid) => {
    completeStarter(grid, workbookOf(grid).getActiveSheet(), starter);
  });
}

/** Rows of values and formulas from A1 on, calculated in the same way. */
export function calculateCells(rows: readonly (readonly Entered[])[]): Promise<Calculated> {
  const cells = rows.map((row) =>
    Object.fromEntries(row.map((content, column) => [column, cellData(entered(content))])),
  );
  return calculated(workbookData({ ...blankSheet('first', 'Sheet 1'), cellData: { ...cells } }), () => {});
}

/** A whole workbook as the engine saves it, calculated in the same way. */
export const calculateWorkbook = (workbook: IWorkbookData): Promise<Calculated> => calculated(workbook, () => {});
