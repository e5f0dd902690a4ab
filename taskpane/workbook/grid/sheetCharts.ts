import { areaOf } from '../../../src/sheets/area.js';
import type { ShownChart } from '../../host/shownChart.js';
import type { Texts } from '../../texts/texts.js';
import { SHEET_VIEWPORT_KEY } from '../engine/render.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { changeCharts } from './chartChanges.js';
import { chartsOf } from './chartMarks.js';
import { type Box, boxOf, placeOfBox } from './chartPlace.js';
import { readCharts, watchCharts } from './charts.js';
import { freePlace } from './freePlace.js';
import { type ChartKind, type ChartRefusal, ownChart } from './ownChart.js';
import { shownAt, workbookOf } from './place.js';
import { meantRegion } from './region.js';
import { type Sight, sightOf, watchSight } from './sight.js';

/** The charts of the shown sheet, each known by its number from 0 on. */
export interface SheetCharts {
  read(): readonly ShownChart[];
  watch(listener: (charts: readonly ShownChart[]) => void): () => void;
  onSight(listener: (sight: Sight) => void): () => void;
  move(chart: number, box: Box): void;
  remove(chart: number): void;
  /** Draws the selected columns; or says why not. */
  draw(kind: ChartKind): ChartRefusal | undefined;
  /** Brings a chart into view. */
  reveal(chart: number): void;
}

/** Letters of a text that runs over into the cells beside it, in pixels: more than they take, rather than less. */
const LETTER = 7.5;

function draw(grid: Grid, kind: ChartKind, words: Texts['charts']): ChartRefusal | undefined {
  const sheet = workbookOf(grid).getActiveSheet();
  const at = (row: number, column: number) => contentOf(shownAt(grid, sheet, row, column).cell);
  const region = meantRegion(grid);
  const chart = ownChart(kind, region, at, words);
  if (typeof chart === 'function') return chart;
  const edges = sightOf(grid)?.edges;
  if (!edges) return undefined;
  const isFree = (row: number, column: number): boolean => {
    if ((at(row, column) ?? '') !== '') return false;
    let left = column - 1;
    while (left >= 0 && (at(row, left) ?? '') === '') left -= 1;
    const text = left < 0 ? null : at(row, left);
    const room = (edges.columns[column - 1] ?? 0) - (edges.columns[left - 1] ?? 0);
    return typeof text !== 'string' || text.length * LETTER < room;
  };
  const last = { row: sheet.getLastRow(), column: sheet.getLastColumn() };
  const taken = chartsOf(sheet.getSheet()).map((one) => boxOf(one, edges));
  const box = freePlace(region, { edges, taken, last, isFree });
  changeCharts(grid, (charts) => [...charts, { ...chart, ...placeOfBox(box, edges) }]);
  return undefined;
}

function reveal(grid: Grid, index: number): void {
  const sheet = workbookOf(grid).getActiveSheet();
  const chart = chartsOf(sheet.getSheet())[index];
  const seen = sheet.getVisibleRangesOfAllViewports()?.get(SHEET_VIEWPORT_KEY.VIEW_MAIN);
  if (!chart || !seen) return;
  const { row, column, rows, columns } = areaOf(chart.place);
  const { xSplit, ySplit } = sheet.getFreeze();
  const high = row >= ySplit && (row < seen.startRow || row + rows - 1 > seen.endRow);
  const wide = column >= xSplit && (column < seen.startColumn || column + columns - 1 > seen.endColumn);
  if (!high && !wide) return;
  sheet.scrollToCell(
    high ? Math.max(0, ySplit, row - 1) : seen.startRow,
    wide ? Math.max(0, xSplit, column - 1) : seen.startColumn,
  );
}

/** @param changing runs what changes the workbook, where that may be changed. */
export function sheetCharts(
  grid: Grid,
  container: HTMLElement,
  words: Texts['charts'],
  changing: <T>(change: () => T) => T,
): SheetCharts {
  return {
    read: () => readCharts(grid),
    watch: (listener) => watchCharts(grid, listener),
    onSight: (listener) => watchSight(grid, container, listener),
    move: (chart, box) =>
      changing(() => {
        const edges = sightOf(grid)?.edges;
        if (!edges) return;
        const place = placeOfBox(box, edges);
        changeCharts(grid, (charts) => charts.map((one, index) => (index === chart ? { ...one, ...place } : one)));
      }),
    remove: (chart) => changing(() => changeCharts(grid, (charts) => charts.filter((_, index) => index !== chart))),
    draw: (kind) => changing(() => draw(grid, kind, words)),
    reveal: (chart) => reveal(grid, chart),
  };
}
