import type { Saved } from './saved.js';
import { kept } from './smallStorage.js';

/**
 * A browser may drop a save that is begun as the page is left; only this older kind of storage is written
 * before the page is gone. What it holds is used once, at the next opening. Where it is full or refused, the page asks
 * before it is left.
 */
const lastMoment = kept(() => localStorage, 'powderbook last moment');

export const keepLastMoment = (saved: Saved): boolean => lastMoment.write(JSON.stringify(saved));

/** What was kept, unchecked; undefined where there is nothing or nothing that can be read. */
export function readLastMoment(): unknown {
  try {
    return JSON.parse(lastMoment.read() ?? 'null') ?? undefined;
  } catch {
    return undefined;
  }
}

export const forgetLastMoment = (): void => lastMoment.forget();
