import { IUndoRedoService, RedoCommand, UndoCommand } from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import type { Grid } from './boot.js';
import { workbookOf } from './place.js';

export interface StepsLeft {
  readonly back: boolean;
  readonly forth: boolean;
}

/** The way back through what was done, and forth again. */
export interface Steps {
  watch(listener: (left: StepsLeft) => void): () => void;
  back(): void;
  forth(): void;
}

const serviceOf = (grid: Grid) => servicesOf(grid.univer).get(IUndoRedoService);

/** What the page itself did so far is nobody's to take back. */
export const forgetSteps = (grid: Grid): void => serviceOf(grid).clearUndoRedo(workbookOf(grid).getId());

export function stepsOf(grid: Grid): Steps {
  const service = serviceOf(grid);
  return {
    watch(listener) {
      const watching = service.undoRedoStatus$.subscribe(({ undos, redos }) =>
        listener({ back: undos > 0, forth: redos > 0 }),
      );
      return () => watching.unsubscribe();
    },
    back: () => void grid.api.executeCommand(UndoCommand.id),
    forth: () => void grid.api.executeCommand(RedoCommand.id),
  };
}
