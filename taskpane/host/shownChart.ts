import type { ChartSeries, SheetChart } from '../../src/sheets/sheet.js';
import type { CellContent } from './cell.js';

/** A chart of the shown sheet with what its cells show at the moment. */
export interface ShownChart extends Omit<SheetChart, 'series'> {
  readonly series: readonly (Omit<ChartSeries, 'across' | 'upwards'> & {
    readonly across: readonly CellContent[];
    readonly upwards: readonly CellContent[];
  })[];
}
