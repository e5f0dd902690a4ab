/**
 * A workbook from a file may keep the page busy without end, and then a reload would only begin that again. A mark
 * stands from the exchange until the page has shown the workbook and answers; whoever finds the mark of an earlier
 * start knows that it never came so far.
 */
const KEY = 'powderbook trial';
/** Long enough for a workbook's first calculation to be over or to be seen not to end. */
const SOON = 3000;

const write = (state: 'exchanged' | 'started' | undefined) => {
  try {
    if (state) localStorage.setItem(KEY, state);
    else localStorage.removeItem(KEY);
  } catch {
    // Refused storage: there is then no saved workbook either.
  }
};

export const beginTrial = () => write('exchanged');
export const endTrial = () => write(undefined);

/** Whether the last start with a new workbook was never over. Marks this start where it is the first with one. */
export function startTrial(): boolean {
  let state: string | null = null;
  try {
    state = localStorage.getItem(KEY);
  } catch {
    return false;
  }
  if (state === 'exchanged') write('started');
  if (state === 'started') endTrial();
  return state === 'started';
}

/** The workbook is shown: a page that answers a moment later, or that can be left, is not caught in it. */
export function passTrial() {
  window.setTimeout(endTrial, SOON);
  window.addEventListener('pagehide', endTrial, { once: true });
}
