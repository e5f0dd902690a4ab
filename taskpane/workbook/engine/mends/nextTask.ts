import { requestImmediateMacroTask } from '../core.js';

/**
 * The engine's way to do something in the next task; what it gives back takes that back.
 * What: it opens a channel for each task. Expected: it is closed once the task was done. Got: it stays open, and the browser
 * keeps every open channel that someone listens to: some five for each entry into a cell.
 */
export function nextTask(work: () => void): () => void {
  const close = requestImmediateMacroTask(() => {
    close();
    work();
  });
  return close;
}
