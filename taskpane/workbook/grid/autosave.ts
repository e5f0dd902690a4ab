import { CommandType, type ICommandInfo } from '../engine/core.js';
import { keepLastMoment } from '../store/lastMoment.js';
import { save, stamped } from '../store/store.js';
import type { Grid } from './boot.js';
import { savedWorkbook, workbookOf } from './place.js';

export type SaveState = 'saved' | 'saving' | 'failed' | 'elsewhere';

export interface Autosave {
  /** Saves what was opened, with the answers of its first calculation where those come soon. */
  begin(): void;
  /** Saves what is not saved yet. */
  flush(): Promise<void>;
  /** Saves no more: another workbook is about to take this one's place. */
  stop(): void;
}

/** Long enough to take a burst of changes as one, short enough that little can be lost. */
const PAUSE = 700;
/** The same for the first calculation. */
const FIRST_PAUSE = 2000;
const CHANGES_WORKBOOK = /^sheet\.mutation|defined-name/;

const isChange = ({ id, type }: Readonly<ICommandInfo>): boolean =>
  type === CommandType.MUTATION && CHANGES_WORKBOOK.test(id);

/** Once anything was changed, the browser asks before the page is left. */
export function askBeforeLeaving(grid: Grid): void {
  const watching = workbookOf(grid).onCommandExecuted((command) => {
    if (!isChange(command)) return;
    watching.dispose();
    window.addEventListener('beforeunload', (leaving) => leaving.preventDefault());
  });
}

/** Saves the workbook a moment after each change, and at once when the page is left. */
export function autosave(grid: Grid, calculated: Promise<void>, tell: (state: SaveState) => void): Autosave {
  let waiting = 0;
  let stopped = false;
  /** Saves that are under way. */
  let unsaved = 0;
  let last: Promise<void> = Promise.resolve();
  /** Whether the last save was refused: only another one could mend that. */
  let failed = false;
  const snapshot = () => stamped(savedWorkbook(grid));

  const write = () => {
    window.clearTimeout(waiting);
    waiting = 0;
    if (stopped) return last;
    const saved = snapshot();
    unsaved += 1;
    // One after the other, so that an older state never comes last.
    last = last
      .then(() => save(saved))
      .then(
        () => {
          failed = false;
          tell(waiting ? 'saving' : 'saved');
        },
        () => {
          failed = true;
          tell('failed');
        },
      )
      .finally(() => {
        unsaved -= 1;
      });
    return last;
  };
  const saveSoon = (pause = PAUSE) => {
    tell('saving');
    waiting ||= window.setTimeout(write, pause);
  };
  const flush = () => (waiting ? write() : last);
  const flushWhenHidden = () => {
    if (document.visibilityState === 'hidden') void flush();
  };

  workbookOf(grid).onCommandExecuted((command) => {
    if (!stopped && isChange(command)) saveSoon();
  });
  window.addEventListener('pagehide', () => {
    if (!stopped && (waiting || unsaved > 0)) keepLastMoment(snapshot());
    void flush();
  });
  document.addEventListener('visibilitychange', flushWhenHidden);
  // The browser asks whether to leave all the same.
  window.addEventListener('beforeunload', (leaving) => {
    if (stopped || !(waiting || unsaved > 0 || failed)) return;
    if (failed || !keepLastMoment(snapshot())) leaving.preventDefault();
  });
  return {
    begin: () => {
      saveSoon(FIRST_PAUSE);
      void calculated.then(() => {
        if (!waiting) return;
        window.clearTimeout(waiting);
        waiting = 0;
        saveSoon();
      });
    },
    flush,
    stop: () => {
      stopped = true;
    },
  };
}
