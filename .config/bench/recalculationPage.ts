import { bindAll } from '../../functions/bind.js';
import { metadata } from '../../functions/metadata.js';
import type { ICellData, IObjectMatrixPrimitiveType } from '../../taskpane/workbook/engine/core.js';
import { LifecycleService, LifecycleStages } from '../../taskpane/workbook/engine/core.js';
import { servicesOf } from '../../taskpane/workbook/engine/services.js';
import { loadLocale } from '../../taskpane/workbook/engine/words/locale.js';
import { answers } from '../../taskpane/workbook/formula/cellError.js';
import { bootGrid } from '../../taskpane/workbook/grid/boot.js';
import { blankSheet, workbookData } from '../../taskpane/workbook/grid/workbookData.js';

const ROWS = 10_000;
const ROUNDS = 5;

type Formula = (mass: string, moisture: string) => string;

/** Five columns of the same arithmetic, by our functions and by the worksheet's own operators. */
const OURS: readonly Formula[] = [
  (a, b) => `=POWDER.DRYMASS(${a},${b})`,
  (a, b) => `=POWDER.ASISMASS(${a},${b})`,
  (a, b) => `=POWDER.DRYPRICE(${a},${b})`,
  (_, b) => `=POWDER.DRYBASIS(${b})`,
  (a, b) => `=POWDER.DRYMASS(2*${a},${b})`,
];
const NATIVE: readonly Formula[] = [
  (a, b) => `=${a}*(1-${b})`,
  (a, b) => `=${a}/(1-${b})`,
  (a, b) => `=${a}/(1-${b})`,
  (_, b) => `=${b}/(1-${b})`,
  (a, b) => `=2*${a}*(1-${b})`,
];

function cells(formulas: readonly Formula[], spilled: boolean): IObjectMatrixPrimitiveType<ICellData> {
  const rows: IObjectMatrixPrimitiveType<ICellData> = {};
  for (let row = 0; row < ROWS; row++) {
    const line: Record<number, ICellData> = { 0: { v: 10 + (row % 997) }, 1: { v: (row % 89) / 100 } };
    for (const [column, formula] of formulas.entries()) {
      if (spilled && row > 0) break;
      const [a, b] = spilled ? [`A1:A${ROWS}`, `B1:B${ROWS}`] : [`A${row + 1}`, `B${row + 1}`];
      line[column + 2] = { f: formula(a, b) };
    }
    rows[row] = line;
  }
  return rows;
}

/** The least time, in milliseconds, from a change of all 10,000 masses until all five columns are new. */
async function recalculated(formulas: readonly Formula[], spilled: boolean): Promise<number> {
  const container = document.getElementById('workbook') as HTMLElement;
  container.replaceChildren();
  container.style.height = '90vh';
  const sheet = { ...blankSheet('first', 'Sheet'), rowCount: ROWS + 10, cellData: cells(formulas, spilled) };
  const locale = await loadLocale('en');
  const functions = { metadata: metadata('').functions, bound: bindAll(answers) };
  const grid = bootGrid({
    container,
    data: workbookData(sheet),
    functions,
    locale,
    darkMode: false,
    calculates: true,
    left() {},
  });
  const settled = () => grid.api.getFormula().onCalculationResultApplied(60_000);
  await servicesOf(grid.univer).get(LifecycleService).onStage(LifecycleStages.Rendered);
  await settled();
  const masses = grid.api.getActiveWorkbook()?.getActiveSheet().getRange(0, 0, ROWS, 1);
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round++) {
    const values = Array.from({ length: ROWS }, (_, row) => [11 + round + (row % 997)]);
    const start = performance.now();
    masses?.setValues(values);
    await settled();
    least = Math.min(least, performance.now() - start);
  }
  grid.univer.dispose();
  return least;
}

const times = {
  ours: await recalculated(OURS, false),
  native: await recalculated(NATIVE, false),
  oursSpilled: await recalculated(OURS, true),
  nativeSpilled: await recalculated(NATIVE, true),
};
Object.assign(globalThis, { times });
