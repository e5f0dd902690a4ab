import type { FromThread, Place } from './signals.js';

/** So many formulas of one calculation are each told of. */
const ONE_BY_ONE = 1000;
/** Those after them are told of so seldom, in milliseconds. */
const PAUSE = 50;

/**
 * Tells where a calculation is. Each word keeps the page a moment, and a hundred thousand of them keep it for a minute:
 * of a long calculation only now and then a place is told, with the word that it is about there.
 */
export class Telling {
  /** Every formula is told of: for a calculation that did not come to an end somewhere about the place told last. */
  exactly = false;
  #told = 0;
  #last = 0;
  readonly #tell: (message: FromThread) => void;

  constructor(tell: (message: FromThread) => void) {
    this.#tell = tell;
  }

  /** Before a calculation and after it there is no place. */
  nowhere() {
    this.#told = 0;
    this.#tell({ at: null });
  }

  at(place: Place) {
    if (this.exactly || this.#told < ONE_BY_ONE) {
      this.#told += 1;
      this.#tell({ at: place, about: !this.exactly && this.#told === ONE_BY_ONE });
      return;
    }
    const now = performance.now();
    if (now - this.#last < PAUSE) return;
    this.#last = now;
    this.#tell({ at: place, about: true });
  }
}
