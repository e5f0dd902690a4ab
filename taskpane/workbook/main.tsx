import './workbook.css';
import './controls.css';
import './print.css';
import { render } from 'preact';
import { dosing } from '../../src/sheets/dosing.js';
import { embeddedHost } from '../host/embedded.js';
import type { Host } from '../host/host.js';
import { mountPane } from '../pane/mount.js';
import { languageOf, loadTexts, type Texts } from '../texts/texts.js';
import type { Autosave } from './grid/autosave.js';
import { open } from './open.js';
import type { Actions } from './shell/bar.js';
import { chartsForPaper } from './shell/charts.js';
import { moveWithF6 } from './shell/keys.js';
import { printSheet } from './shell/print.js';
import { Shell } from './shell/shell.js';
import { Store } from './shell/state.js';
import { tellAfterReload } from './store/laterNotice.js';
import { takeOver } from './store/lock.js';
import { shownSheet } from './store/shownSheet.js';
import { bringBack, replaceBy, startAfresh } from './store/store.js';
import { beginTrial } from './store/trial.js';

const store = new Store();
const page = document.documentElement;
const { language } = navigator;
let saving: Autosave | undefined;

/** What the pane has put into the sheet should be seen, also where only one of the two has room. */
function showingSheet(host: Host): Host {
  const shown = async <T,>(work: Promise<T>): Promise<T> => {
    const done = await work;
    store.set({ view: 'sheet' });
    return done;
  };
  return {
    ...host,
    write: (block, options) => shown(host.write(block, options)),
    insertSheet: (sheet) => shown(host.insertSheet(sheet)),
    goTo: (reference) => shown(host.goTo(reference)),
    copyWithValues: (ending) => shown(host.copyWithValues(ending)),
  };
}

/** Exchanges the workbook: the page opens again with the other one. */
async function exchange(work: () => Promise<void>) {
  await saving?.flush();
  await work();
  saving?.stop();
  window.location.reload();
}

function start(container: HTMLElement, pane: HTMLElement, words: Texts) {
  const opened = open({ store, container, starter: dosing, language, words });
  void mountPane(pane, showingSheet(embeddedHost(opened.then(({ workbook }) => workbook))));
  printSheet(() => store.state.workbook?.page(), words.workbook, language, chartsForPaper(words, language));
  moveWithF6(store, pane, () => store.state.workbook?.focus());
  opened.then(
    (result) => {
      saving = result.saving;
      page.dataset.grid = 'ready';
      void result.workbook.calculation.first.then(() => {
        page.dataset.figures = 'calculated';
      });
    },
    (cause: unknown) => {
      page.dataset.grid = 'failed';
      store.set({ failed: words.workbook.gridFailed(cause instanceof Error ? cause.message : String(cause)) });
    },
  );
}

async function show(root: HTMLElement) {
  const texts = await loadTexts(language);
  page.lang = languageOf(language);
  const actions: Actions = {
    startAfresh: () => exchange(startAfresh),
    bringBack: () => exchange(bringBack),
    takeOver: async () => {
      await takeOver();
      window.location.reload();
    },
    openFile: ({ workbook, shown, notice }) =>
      exchange(async () => {
        // What could not be saved would not be there to be brought back.
        if (store.state.saving === 'failed') throw new Error('The present workbook is not saved.');
        await replaceBy(workbook);
        shownSheet.write(shown);
        beginTrial();
        tellAfterReload(notice);
      }),
  };
  const begin = (grid: HTMLElement, pane: HTMLElement) => start(grid, pane, texts);
  root.replaceChildren();
  render(<Shell store={store} actions={actions} texts={texts} onPlaces={begin} />, root);
}

const root = document.getElementById('workbook');
if (root) void show(root);
