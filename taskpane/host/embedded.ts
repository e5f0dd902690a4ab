import type { OpenedWorkbook } from '../workbook/grid/opened.js';
import type { Host } from './host.js';

/**
 * The embedded workbook as the pane sees it. The pane stands before the grid has loaded, so the host is made
 * from the promise of a workbook: what the pane asks too early is answered once it is open.
 */
export function embeddedHost(opened: Promise<OpenedWorkbook>): Host {
  /** Begins to watch as soon as there is a workbook, unless it was ended before. */
  const once = (watch: (workbook: OpenedWorkbook) => () => void): (() => void) => {
    let stopped = false;
    let stop = () => {};
    const start = (workbook: OpenedWorkbook) => {
      if (!stopped) stop = watch(workbook);
    };
    // A grid that cannot start is told of by the page itself.
    opened.then(start, () => {});
    return () => {
      stopped = true;
      stop();
    };
  };
  return {
    name: 'embedded',
    selection: async () => (await opened).selection(),
    onSelection: (listener) => once((workbook) => workbook.onSelection(listener)),
    read: async (references) => (await opened).read(references),
    write: async (block, options) => (await opened).write(block, options?.overwrite ?? false),
    insertSheet: async (sheet) => (await opened).insertSheet(sheet),
    readAll: async (options) => {
      const contents = (await opened).readAll();
      options?.signal?.throwIfAborted();
      options?.onProgress?.(1);
      return contents;
    },
    turnIntoNumbers: async (place) => (await opened).turnIntoNumbers(place),
    goTo: async (reference) => (await opened).goTo(reference),
    copyWithValues: async (ending) => (await opened).copyWithValues(ending),
  };
}
