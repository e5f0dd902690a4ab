import { IRenderManagerService, SHEET_VIEWPORT_KEY } from '../engine/render.js';
import { servicesOf } from '../engine/services.js';
import { SheetSkeletonManagerService } from '../engine/sheetsUi.js';
import type { Grid } from './boot.js';
import type { Edges } from './chartPlace.js';
import { workbookOf } from './place.js';

interface Spot {
  readonly left: number;
  readonly top: number;
}

/** Which part of the shown sheet is seen, and how: lengths are the sheet’s own pixels. */
export interface Sight {
  readonly edges: Edges;
  /** Room of the numbers of rows and the letters of columns. */
  readonly header: Spot;
  /** Columns and rows that stay in view, and where they end. */
  readonly frozen: { readonly columns: number; readonly rows: number };
  readonly frozenTo: Spot;
  readonly scroll: Spot;
  readonly zoom: number;
  /** What the sheet is drawn on. */
  readonly drawing: HTMLElement;
}

/** What is seen at the moment; nothing before the sheet is drawn. */
export function sightOf(grid: Grid): Omit<Sight, 'drawing'> | undefined {
  const workbook = workbookOf(grid);
  const render = servicesOf(grid.univer).get(IRenderManagerService).getRenderById(workbook.getId());
  const skeleton = render?.with(SheetSkeletonManagerService).getCurrentSkeleton();
  const seen = render?.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN);
  if (!render || !skeleton || !seen) return undefined;
  const { columnWidthAccumulation: columns, rowHeightAccumulation: rows } = skeleton;
  const { xSplit, ySplit } = workbook.getActiveSheet().getFreeze();
  const frozen = { columns: Math.max(0, xSplit), rows: Math.max(0, ySplit) };
  return {
    edges: { columns, rows },
    header: { left: skeleton.rowHeaderWidth, top: skeleton.columnHeaderHeight },
    frozen,
    frozenTo: { left: columns[frozen.columns - 1] ?? 0, top: rows[frozen.rows - 1] ?? 0 },
    scroll: { left: seen.viewportScrollX, top: seen.viewportScrollY },
    zoom: render.scene.scaleX,
  };
}

/** Calls the listener with what is seen, now and with each picture of the page after it may have changed. */
export function watchSight(grid: Grid, container: HTMLElement, listener: (sight: Sight) => void): () => void {
  let waiting = 0;
  const drawing = container.querySelector<HTMLElement>('[id^="univer-sheet-main-canvas"]');
  const look = () => {
    waiting = 0;
    const sight = sightOf(grid);
    if (sight && drawing) listener({ ...sight, drawing });
  };
  const soon = () => {
    waiting ||= requestAnimationFrame(look);
  };
  const commands = workbookOf(grid).onCommandExecuted(soon);
  const scene = servicesOf(grid.univer).get(IRenderManagerService).getRenderById(workbookOf(grid).getId())?.scene;
  const scrolled = scene?.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN)?.onScrollAfter$.subscribeEvent(soon);
  const sized = new ResizeObserver(soon);
  if (drawing) sized.observe(drawing);
  look();
  return () => {
    cancelAnimationFrame(waiting);
    commands.dispose();
    scrolled?.unsubscribe();
    sized.disconnect();
  };
}
