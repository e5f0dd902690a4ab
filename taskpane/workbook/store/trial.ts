import { kept } from './smallStorage.js';

/**
 * A workbook may keep the page busy without end, and then a reload would only begin that again. So each start leaves a
 * mark, until the page has shown the workbook, calculated it and answers; whoever finds the mark of an earlier start knows
 * that it never came so far.
 *
 * - `exchanged`: a workbook from a file took the place of another one, and no start has tried it yet;
 * - `file`: a start tries it;
 * - `usual`: a start tries the workbook that was there anyway;
 * - `careful`: a start tries that one without calculating it.
 */
type Mark = 'exchanged' | 'file' | 'usual' | 'careful';

/** What the start before this one asks for. */
export type Advice = 'usual' | 'workbook before' | 'careful' | 'set aside';

const mark = kept(() => localStorage, 'powderbook trial');
const write = (state: Mark) => mark.write(state);
/** A moment in which the page is seen to answer. */
const SOON = 1000;

/** The page is about to open again with another workbook, which is not this page's to judge any more. */
let exchanging = false;

export function beginTrial() {
  exchanging = true;
  write('exchanged');
}

/** How to start, and marks that it was begun. */
export function startTrial(): Advice {
  const found = mark.read();
  if (found === 'file') {
    write('usual');
    return 'workbook before';
  }
  if (found === 'usual') {
    write('careful');
    return 'careful';
  }
  if (found === 'exchanged') write('file');
  else write('usual');
  return found === 'careful' ? 'set aside' : 'usual';
}

/** The workbook is shown: a page that answers after its first calculation, or that can be left, is not caught in it. */
export function passTrial(calculated: Promise<void>) {
  const end = () => {
    if (!exchanging) mark.forget();
  };
  void calculated.then(() => window.setTimeout(end, SOON));
  window.addEventListener('pagehide', end, { once: true });
}
