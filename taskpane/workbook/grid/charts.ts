import type { CellContent } from '../../host/cell.js';
import type { ShownChart } from '../../host/shownChart.js';
import { deserializeRangeWithSheet, SetFormulaCalculationResultMutation } from '../engine/formula.js';
import {
  InsertSheetMutation,
  RemoveSheetMutation,
  SetRangeValuesMutation,
  SetWorksheetActiveOperation,
} from '../engine/sheets.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { SET_CHARTS } from './chartChanges.js';
import { chartsOf } from './chartMarks.js';
import { MOVES } from './moves.js';
import { shownAt, workbookOf } from './place.js';

/** The charts of the shown sheet with what their cells show. */
export function readCharts(grid: Grid): readonly ShownChart[] {
  const sheet = workbookOf(grid).getActiveSheet();
  const values = (range: string): CellContent[] => {
    const { startRow, endRow, startColumn, endColumn } = deserializeRangeWithSheet(range).range;
    const found: CellContent[] = [];
    for (let row = startRow; row <= endRow; row += 1)
      for (let column = startColumn; column <= endColumn; column += 1)
        found.push(contentOf(shownAt(grid, sheet, row, column).cell));
    return found;
  };
  return chartsOf(sheet.getSheet()).map((chart) => ({
    ...chart,
    series: chart.series.map(({ named, ...one }) => ({
      ...one,
      name: String((named && values(named)[0]) ?? one.name),
      across: values(one.across),
      upwards: values(one.upwards),
    })),
  }));
}

/** After these the figures of a chart may be others, once a calculation's results are in place. */
const CHANGES = new Set<string>([
  InsertSheetMutation.id,
  RemoveSheetMutation.id,
  SetFormulaCalculationResultMutation.id,
  SetRangeValuesMutation.id,
]);
/** After these a chart may stand elsewhere. */
const AT_ONCE = new Set<string>([...MOVES, SET_CHARTS, SetWorksheetActiveOperation.id]);

const PAUSE = 100;

/** Calls the listener with the charts of the shown sheet whenever they have changed. */
export function watchCharts(grid: Grid, listener: (charts: readonly ShownChart[]) => void): () => void {
  let last = '';
  let waiting = 0;
  const look = () => {
    waiting = 0;
    const charts = readCharts(grid);
    const text = JSON.stringify(charts);
    if (text === last) return;
    last = text;
    listener(charts);
  };
  const subscription = workbookOf(grid).onCommandExecuted(({ id }) => {
    const soon = AT_ONCE.has(id);
    if (!soon && !CHANGES.has(id)) return;
    window.clearTimeout(waiting);
    waiting = window.setTimeout(look, soon ? 0 : PAUSE);
  });
  look();
  return () => {
    window.clearTimeout(waiting);
    subscription.dispose();
  };
}
