import { CellError } from './cellError.js';
import type { Matrix } from './values.js';

/** A cell holding a formula, named by the sheet's identity in the engine. */
export interface Place {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

interface Told {
  round: number;
  readonly calls: { readonly name: string; readonly result: Matrix }[];
}

/** More calls than this in one formula are not remembered: the first sentences are the ones shown. */
const MOST_CALLS = 50;

const key = ({ sheetId, row, column }: Place) => `${sheetId}:${row}:${column}`;
const isOneCell = (matrix: Matrix) => matrix.length === 1 && matrix[0]?.length === 1;
const errorsOf = (matrix: Matrix) => matrix.flat().filter((value) => value instanceof CellError);

/**
 * Which sentence stands behind which error value. The engine keeps only the error's code in the cell, so
 * every call of one of our functions reports here; a cell's report is renewed whenever it is calculated.
 */
export class Messages {
  readonly #cells = new Map<string, Told>();
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
    const refused = result.some((row) => row.some((value) => value instanceof CellError));
    const id = key(place);
    const known = this.#cells.get(id);
    if (known && known.round === this.#round) {
      if (refused && known.calls.length < MOST_CALLS) known.calls.push({ name, result });
    } else if (refused) {
      this.#cells.set(id, { round: this.#round, calls: [{ name, result }] });
    } else if (known) {
      this.#cells.delete(id);
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
    const here = calls.map(({ result }) => (isOneCell(result) ? result[0]?.[0] : result[row]?.[column]));
    const anywhere = row === 0 && column === 0 ? calls.flatMap(({ result }) => errorsOf(result)) : [];
    const error = [...here, ...anywhere].find((value) => value instanceof CellError && value.code === code);
    return (error as CellError | undefined)?.message || undefined;
  }
}
