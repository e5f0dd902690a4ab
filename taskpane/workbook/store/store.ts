import { createStore, get, set, setMany, type UseStore } from 'idb-keyval';
import type { IWorkbookData } from '../engine/core.js';
import { forgetLastMoment, readLastMoment } from './lastMoment.js';
import { generationOf, isSaved, later, type Saved } from './saved.js';

const CURRENT = 'workbook';
const BEFORE = 'workbook before';

export type Loaded =
  | { readonly kind: 'saved'; readonly workbook: IWorkbookData }
  | { readonly kind: 'none' }
  | { readonly kind: 'unreadable' }
  | { readonly kind: 'unavailable' };

/** That of the latest workbook which is known to be kept. */
let generation = 0;

/** A workbook as it is kept, later than all that were kept before. */
export function stamped(workbook: IWorkbookData): Saved {
  generation += 1;
  return { saved: new Date().toISOString(), generation, workbook };
}

let opened: UseStore | undefined;

/** Opened once, so that the last save before the page is left finds the way open; and late, since it may be refused. */
function store(): UseStore {
  opened ??= createStore('powderbook', 'workbooks');
  return opened;
}

/**
 * All of them or none, in one transaction: a page may be closed at any moment. An entry of undefined reads as none. What
 * was kept at the last moment belonged to the workbook that gives way.
 */
async function put(entries: Readonly<Record<string, unknown>>): Promise<void> {
  await setMany(Object.entries(entries), store());
  forgetLastMoment();
}

export async function load(): Promise<Loaded> {
  let saved: unknown;
  try {
    saved = await get<unknown>(CURRENT, store());
  } catch {
    return { kind: 'unavailable' };
  }
  if (saved !== undefined && !isSaved(saved)) return { kind: 'unreadable' };
  const lastMoment = readLastMoment();
  generation = Math.max(generation, generationOf(saved), generationOf(lastMoment));
  const latest = later(saved, lastMoment);
  return latest ? { kind: 'saved', workbook: latest.workbook } : { kind: 'none' };
}

export async function save(saved: Saved): Promise<void> {
  await set(CURRENT, saved, store());
  forgetLastMoment();
}

/** Moves a workbook that cannot be opened out of the way, under a key of its own. Returns the key. */
export async function setAside(): Promise<string> {
  const key = `workbook set aside ${new Date().toISOString()}`;
  await put({ [key]: await get<unknown>(CURRENT, store()), [CURRENT]: undefined });
  return key;
}

/** Makes room for a new workbook; the old one is kept as the one before. */
export async function startAfresh(): Promise<void> {
  await put({ [BEFORE]: await get<unknown>(CURRENT, store()), [CURRENT]: undefined });
}

/** Puts another workbook in the place of the present one, which is kept as the one before: both or neither. */
export async function replaceBy(workbook: IWorkbookData): Promise<void> {
  const current = await get<unknown>(CURRENT, store());
  await put({ [BEFORE]: current, [CURRENT]: stamped(workbook) });
}

export async function hasBefore(): Promise<boolean> {
  return (await get<unknown>(BEFORE, store()).catch(() => undefined)) !== undefined;
}

/** Exchanges the present workbook and the one before. */
export async function bringBack(): Promise<void> {
  const [before, current] = [await get<unknown>(BEFORE, store()), await get<unknown>(CURRENT, store())];
  await put({ [CURRENT]: isSaved(before) ? stamped(before.workbook) : before, [BEFORE]: current });
}
