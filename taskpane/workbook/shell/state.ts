import type { SaveState } from '../grid/autosave.js';
import type { OpenedWorkbook } from '../grid/opened.js';

export interface Notice {
  readonly text: string;
  /** Each notice anew is read out, even one with the same words. */
  readonly number: number;
}

export interface State {
  readonly workbook?: OpenedWorkbook;
  readonly failed?: string;
  readonly saving: SaveState | 'loading';
  readonly notice?: Notice;
  /** Which of the two parts shows where there is room for one only. */
  readonly view: 'sheet' | 'functions';
  readonly hasBefore: boolean;
}

type Listener = (state: State) => void;

/** The page's state, changed by parts that load at different times and drawn by one component. */
export class Store {
  #state: State = { saving: 'loading', view: 'sheet', hasBefore: false };
  #told = 0;
  readonly #listeners = new Set<Listener>();

  get state() {
    return this.#state;
  }

  set(change: Partial<State>) {
    this.#state = { ...this.#state, ...change };
    for (const listener of this.#listeners) listener(this.#state);
  }

  /** Says something. What it gives back takes the notice away, as long as nothing else was said since. */
  tell(text: string): () => void {
    this.#told += 1;
    const number = this.#told;
    this.set({ notice: { text, number } });
    return () => {
      if (this.#state.notice?.number === number) this.dismiss();
    };
  }

  dismiss() {
    const { notice: _, ...rest } = this.#state;
    this.#state = rest;
    this.set({});
  }

  listen(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}
