import {
  type Univer as Engine,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
} from '../../taskpane/workbook/engine/core.js';
import { UniverFormulaEnginePlugin } from '../../taskpane/workbook/engine/formula.js';
import { UniverSheetsPlugin } from '../../taskpane/workbook/engine/sheets.js';
import { CalculationMode, UniverSheetsFormulaPlugin } from '../../taskpane/workbook/engine/sheetsFormula.js';
import { FUniver } from '../../taskpane/workbook/engine/withoutPage.js';
import { blankSheet, workbookData } from '../../taskpane/workbook/grid/workbookData.js';

type Content = string | number;

/** The engine as it comes, with none of our mends, holding and calculating one sheet of values and formulas. */
export async function bareEngine(rows: readonly (readonly Content[])[]) {
  const univer: Engine = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.ERROR,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin, { notExecuteFormula: false });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  const cells = rows.map((row) =>
    Object.fromEntries(
      row.map((content, column) => [column, String(content).startsWith('=') ? { f: String(content) } : { v: content }]),
    ),
  );
  univer.createUnit(
    UniverInstanceType.UNIVER_SHEET,
    workbookData({ ...blankSheet('first', 'Sheet 1'), cellData: { ...cells } }),
  );
  const api = FUniver.newAPI(univer);
  const workbook = api.getActiveWorkbook();
  if (!workbook) throw new Error('The engine has no workbook.');
  const sheet = workbook.getActiveSheet();
  const settled = () => api.getFormula().onCalculationResultApplied(60_000);
  await settled();
  return { univer, api, workbook, sheet, settled, at: (address: string) => sheet.getRange(address).getValue() };
}
