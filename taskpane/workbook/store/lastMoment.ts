import type { Saved } from './saved.js';

/**
 * A browser may drop a save that is begun as the page is left; only this older kind of storage is written
 * before the page is gone. What it holds is used once, at the next opening.
 */
const KEY = 'powderbook last moment';

export function keepLastMoment(saved: Saved) {
  try {
    localStorage.setItem(KEY, JSON.stringify(saved));
  } catch {
    // Full or refused: the save that is under way is then all there is.
  }
}

/** What was kept, unchecked; undefined where there is nothing or nothing that can be read. */
export function readLastMoment(): unknown {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? 'null') ?? undefined;
  } catch {
    return undefined;
  }
}

export function forgetLastMoment() {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // Refused storage holds nothing to forget.
  }
}
