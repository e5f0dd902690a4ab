import { kept } from './smallStorage.js';

/**
 * A workbook from a file may keep the page busy without end, and then a reload would only begin that again. A mark
 * stands from the exchange until the page has shown the workbook and answers; whoever finds the mark of an earlier
 * start knows that it never came so far.
 */
const mark = kept(() => localStorage, 'powderbook trial');
/** Long enough for a workbook's first calculation to be over or to be seen not to end. */
const SOON = 3000;

export const beginTrial = () => mark.write('exchanged');
export const endTrial = () => mark.forget();

/** Whether the last start with a new workbook was never over. Marks this start where it is the first with one. */
export function startTrial(): boolean {
  const state = mark.read();
  if (state === 'exchanged') mark.write('started');
  if (state === 'started') endTrial();
  return state === 'started';
}

/** The workbook is shown: a page that answers a moment later, or that can be left, is not caught in it. */
export function passTrial() {
  window.setTimeout(endTrial, SOON);
  window.addEventListener('pagehide', endTrial, { once: true });
}
