import { IUndoRedoService } from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import type { Grid } from './boot.js';
import { workbookOf } from './place.js';

/** Runs `work` so that one press of undo takes all of it back. */
export function asOneStep(grid: Grid, work: () => void): void {
  const batch = servicesOf(grid.univer).get(IUndoRedoService).__tempBatchingUndoRedo(workbookOf(grid).getId());
  try {
    work();
  } finally {
    batch.dispose();
  }
}
