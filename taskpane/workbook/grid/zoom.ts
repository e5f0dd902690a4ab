import { SetWorksheetActiveOperation } from '../engine/sheets.js';
import { SetZoomRatioOperation } from '../engine/sheetsUi.js';
import type { Grid } from './boot.js';
import { workbookOf } from './place.js';

export interface Zoom {
  watch(listener: (ratio: number) => void): () => void;
  set(ratio: number): void;
}

/** The size of the sheet that is shown; the keys change it as well. */
export function zoomOf(grid: Grid): Zoom {
  const workbook = workbookOf(grid);
  const changes = new Set<string>([SetZoomRatioOperation.id, SetWorksheetActiveOperation.id]);
  const now = () => workbook.getActiveSheet().getZoom();
  return {
    watch(listener) {
      listener(now());
      const watching = workbook.onCommandExecuted(({ id }) => {
        if (changes.has(id)) listener(now());
      });
      return () => watching.dispose();
    },
    set: (ratio) => void workbook.getActiveSheet().zoom(ratio),
  };
}
