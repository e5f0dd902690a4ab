import { CellError } from './cellError.js';
import type { Matrix } from './values.js';

/** A cell holding a formula, named by the sheet's identity in the engine. */
export interface Place {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/** An error as it is in one thread or another: what is sent between them loses its class. */
type Refused = Pick<CellError, 'code' | 'message'>;

/** What one call gave, where it gave errors; the places of other values are empty. */
interface Call {
  readonly name: string;
  readonly result: readonly (readonly (Refused | undefined)[])[];
}

interface Told {
  round: number;
  readonly calls: Call[];
}

/** What is now known of one cell; without calls, there is nothing to say any more. */
export interface Change {
  readonly cell: string;
  readonly calls?: readonly Call[];
}

/** More calls than this in one formula are not remembered: the first sentences are the ones shown. */
const MOST_CALLS = 50;

const key = ({ sheetId, row, column }: Place) => `${sheetId}:${row}:${column}`;
const isOneCell = ({ result }: Call) => result.length === 1 && result[0]?.length === 1;
const errorsOf = ({ result }: Call) => result.flat().filter((value) => value !== undefined);
const isError = (value: unknown): value is CellError => value instanceof CellError;

/**
 * Which sentence stands behind which error value. The engine keeps only the error's code in the cell, so
 * every call of one of our functions reports here; a cell's report is renewed whenever it is calculated.
 */
export class Messages {
  readonly #cells = new Map<string, Told>();
  #changed = new Set<string>();
  #round = 0;

  /** To be called as each calculation starts. */
  newRound() {
    this.#round += 1;
  }

  /** Forgets everything: cells have moved, and the whole workbook is calculated anew. */
  forget() {
    this.#cells.clear();
  }

  report(place: Place, name: string, result: Matrix) {
    const refused = result.some((row) => row.some(isError));
    const id = key(place);
    const known = this.#cells.get(id);
    if (!refused && !known) return;
    this.#changed.add(id);
    const call = { name, result: result.map((row) => row.map((value) => (isError(value) ? value : undefined))) };
    if (known && known.round === this.#round) {
      if (refused && known.calls.length < MOST_CALLS) known.calls.push(call);
    } else if (refused) {
      this.#cells.set(id, { round: this.#round, calls: [call] });
    } else {
      this.#cells.delete(id);
    }
  }

  /** What has changed since this was last asked, for the thread that shows it. */
  changes(): readonly Change[] {
    const changed = [...this.#changed];
    this.#changed = new Set();
    return changed.map((cell) => ({ cell, ...this.#callsOf(cell) }));
  }

  #callsOf(cell: string): Pick<Change, 'calls'> {
    const told = this.#cells.get(cell);
    return told ? { calls: told.calls } : {};
  }

  /** Takes over what the thread that calculates has found. */
  take(changes: readonly Change[]) {
    for (const { cell, calls } of changes) {
      if (calls) this.#cells.set(cell, { round: this.#round, calls: [...calls] });
      else this.#cells.delete(cell);
    }
  }

  /**
   * The sentence behind error `code`, shown at `row`, `column` from the cell that holds `formula`.
   * A call that no longer stands in the formula is passed over.
   */
  behind(place: Place, formula: string, code: string, row = 0, column = 0): string | undefined {
    const upper = formula.toUpperCase();
    const calls = (this.#cells.get(key(place))?.calls ?? []).filter(({ name }) => upper.includes(name));
    // A call that was refused whole stands behind every cell that shows its error.
    const here = calls.map((call) => (isOneCell(call) ? call.result[0]?.[0] : call.result[row]?.[column]));
    const anywhere = row === 0 && column === 0 ? calls.flatMap(errorsOf) : [];
    return [...here, ...anywhere].find((value) => value?.code === code)?.message || undefined;
  }
}
