import type { StarterSheet } from '../../src/sheets/sheet.js';
import type { Texts } from '../texts/texts.js';
import type { IWorkbookData } from './engine/core.js';
import type { Autosave } from './grid/autosave.js';
import type { OpenedWorkbook } from './grid/opened.js';
import type { Store } from './shell/state.js';
import { takeNotice } from './store/laterNotice.js';
import { handOverWhenAsked, mayWrite } from './store/lock.js';
import { shownSheet } from './store/shownSheet.js';
import { bringBack, hasBefore, load, setAside } from './store/store.js';
import { type Advice, passTrial, startTrial } from './store/trial.js';

interface Opening {
  readonly store: Store;
  readonly container: HTMLElement;
  readonly starter: StarterSheet;
  readonly language: string;
  readonly words: Texts;
}

interface Opened {
  readonly workbook: OpenedWorkbook;
  readonly saving: Autosave | undefined;
}

/** Moves a damaged workbook out of the way, so that the next save does not write over it. */
async function keepAside(store: Store, words: Texts): Promise<boolean> {
  const key = await setAside().catch(() => undefined);
  store.tell(key ? words.workbook.keptAside(key) : words.workbook.notKeptAside);
  return key !== undefined;
}

/** What the last start left behind: where it ended in a workbook from a file, the one before takes its place again. */
async function takeAdvice(store: Store, words: Texts): Promise<Advice> {
  const advice = startTrial();
  if (advice === 'careful') store.tell(words.workbook.trialCareful);
  if (advice !== 'workbook before') return advice;
  const back = await bringBack().then(
    () => true,
    () => false,
  );
  if (back) store.tell(words.workbook.trialLeft);
  return 'usual';
}

/** Opens the saved workbook, or a new one, and saves it from then on. */
export async function open({ store, container, starter, language, words }: Opening): Promise<Opened> {
  // The engine is the page's largest part by far; it loads while the rest is already there.
  let lost = () => {};
  const writes = mayWrite(() => lost());
  // Only the page that may write exchanges workbooks: another one may still be busy with the one on trial.
  const advised = writes.then((may) => (may ? takeAdvice(store, words) : 'usual'));
  const [{ startGrid }, loaded, mine, advice] = await Promise.all([
    import(/* webpackChunkName: "grid" */ './grid/start.js'),
    advised.then(load),
    writes,
    advised,
  ]);
  let saves = loaded.kind !== 'unavailable';
  const notice = takeNotice();
  const tell = (message: string) => store.tell(message);
  const boot = (saved: IWorkbookData | undefined) =>
    startGrid({ openFormats, container, saved, calculates: advice !== 'careful', starter, language, words, tell });
  const openFormats = () => document.querySelector<HTMLSelectElement>('.workbook-format select')?.focus();
  let workbook: OpenedWorkbook;
  try {
    const aside = loaded.kind === 'unreadable' || (loaded.kind === 'saved' && advice === 'set aside');
    if (aside) saves = await keepAside(store, words);
    workbook = await boot(loaded.kind === 'saved' && !aside ? loaded.workbook : undefined);
    if (notice) store.tell(notice);
  } catch (cause) {
    if (loaded.kind !== 'saved') throw cause;
    saves = await keepAside(store, words);
    container.replaceChildren();
    workbook = await boot(undefined);
  }
  const kept = saves && (await hasBefore());
  const saving = saves && mine ? workbook.autosave((state) => store.set({ saving: state })) : undefined;
  const shown = shownSheet.read();
  if (shown) workbook.tabs.show(shown);
  workbook.tabs.watch((tabs) => shownSheet.write(tabs.find(({ active }) => active)?.id ?? ''));
  store.set({ workbook, saving: saves ? (mine ? 'saved' : 'elsewhere') : 'failed', hasBefore: kept });
  // Afterwards, so that nothing is kept waiting by it; its keys and a filter that was saved want it soon.
  void workbook.calculation.first.then(() => workbook.tools()).catch(() => {});
  if (mine) passTrial(workbook.calculation.first);
  // A new workbook, or what was kept at the last moment, is in no storage yet.
  saving?.begin();
  if (saves && !mine) await workbook.makeReadOnly();
  if (!saves) workbook.askBeforeLeaving();
  const onlyRead = () => {
    saving?.stop();
    void workbook.makeReadOnly();
    store.set({ saving: 'elsewhere' });
    store.tell(words.workbook.takenOver);
  };
  lost = onlyRead;
  if (mine) {
    handOverWhenAsked(async () => {
      await workbook.makeReadOnly();
      await saving?.flush();
      onlyRead();
    });
  }
  return { workbook, saving };
}
