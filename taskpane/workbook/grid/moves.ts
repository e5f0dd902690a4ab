import {
  InsertColMutation,
  InsertRowMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  ReorderRangeMutation,
} from '../engine/sheets.js';
import type { Grid } from './boot.js';
import { workbookOf } from './place.js';

export const MOVES = new Set<string>([
  InsertColMutation.id,
  InsertRowMutation.id,
  MoveColsMutation.id,
  MoveRangeMutation.id,
  MoveRowsMutation.id,
  RemoveColMutation.id,
  RemoveRowMutation.id,
  ReorderRangeMutation.id,
]);

/** Sentences are kept by place. When cells move, they are gathered anew by calculating everything once. */
export function renewMessagesAfterMoves(grid: Grid) {
  let waiting = false;
  workbookOf(grid).onCommandExecuted(({ id }) => {
    if (!MOVES.has(id) || waiting) return;
    waiting = true;
    setTimeout(() => {
      waiting = false;
      grid.messages.forget();
      grid.api.getFormula().executeCalculation();
    });
  });
}
