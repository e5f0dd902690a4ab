export type CalculationState = 'idle' | 'busy' | 'stopped';

/** How the calculation of the workbook stands, and what someone can do about it. */
export interface Calculation {
  watch(listener: (state: CalculationState) => void): () => void;
  /** Resolves at the end of the first calculation, or of waiting for it. */
  readonly first: Promise<void>;
  /** Whether all formulas have the answers of the present inputs. */
  upToDate(): boolean;
  /** Ends what is under way: formulas keep the answers that they have until the next beginning. */
  stop(): void;
  /** Calculates everything anew, after a stop or a start that calculated nothing. */
  begin(): void;
}

/** A calculation that is through sooner is not told of, in milliseconds. */
const SOON = 1000;

/** Where the calculation stands. Once it was stopped it stays so until it begins again. */
export class Standing {
  /** Calculations that were asked for and are not through. */
  #asked = 0;
  #telling = 0;
  #state: CalculationState;
  readonly #listeners = new Set<(state: CalculationState) => void>();

  readonly first: Promise<void>;
  #endFirst = () => {};
  #once = false;

  constructor(state: CalculationState) {
    this.#state = state;
    this.first = new Promise((resolve) => {
      this.#endFirst = resolve;
    });
    if (state === 'stopped') this.#endFirst();
  }

  #set(state: CalculationState) {
    if (state === this.#state) return;
    this.#state = state;
    for (const listener of this.#listeners) listener(state);
  }

  #rest(state: CalculationState) {
    window.clearTimeout(this.#telling);
    this.#telling = 0;
    this.#asked = 0;
    this.#set(state);
  }

  asked() {
    if (this.#state === 'stopped') return;
    this.#asked += 1;
    if (this.#telling === 0) this.#telling = window.setTimeout(() => this.#set('busy'), SOON);
  }

  through() {
    this.#once = true;
    this.#endFirst();
    if (this.#asked > 1) this.#asked -= 1;
    else if (this.#state !== 'stopped') this.#rest('idle');
  }

  stop() {
    this.#endFirst();
    this.#rest('stopped');
  }

  begin() {
    this.#rest('idle');
  }

  upToDate(): boolean {
    return this.#once && this.#asked === 0 && this.#state !== 'stopped';
  }

  watch(listener: (state: CalculationState) => void): () => void {
    this.#listeners.add(listener);
    listener(this.#state);
    return () => this.#listeners.delete(listener);
  }
}
