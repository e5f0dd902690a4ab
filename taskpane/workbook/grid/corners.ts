import { type ICellData, InterceptorEffectEnum, type Nullable } from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '../engine/sheets.js';
import type { Grid } from './boot.js';

/** Of a corner, in pixels. */
const SIZE = 7;

interface Corner {
  /** Which corner of the cell: `tr` is the upper right one, `br` the lower. */
  readonly at: 'tr' | 'br';
  /** Seen on the white and on the dark ground of the cells. */
  readonly color: string;
  /** After what the cell shows is settled; lower comes later. */
  readonly priority: number;
}

/** Draws a small corner into each cell of a kind. */
export function markCorners(
  grid: Grid,
  { at, color, priority }: Corner,
  isMarked: (cell: Nullable<ICellData>) => boolean,
): void {
  servicesOf(grid.univer)
    .get(SheetInterceptorService)
    .intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      priority,
      effect: InterceptorEffectEnum.Style,
      handler: (cell, { rawData }, next) =>
        isMarked(rawData)
          ? next({ ...rawData, ...cell, markers: { ...cell?.markers, [at]: { size: SIZE, color } } })
          : next(cell),
    });
}
