import type { Unit } from './units.js';

/** One figure or text of an answer that has several. */
export type Field =
  /** `error` adds a row of its own for the standard error. */
  | { readonly label: string; readonly unit: Unit; readonly error?: true }
  | { readonly label: string; readonly text: true };
/** Figures and texts by key, in the order in which they are shown. */
export type Fields = Readonly<Record<string, Field>>;

/** What a calculation answers: its shape, and label and unit of each figure. */
export type Output =
  | { readonly kind: 'number'; readonly label: string; readonly unit: Unit }
  | { readonly kind: 'text'; readonly label: string }
  /** One text for each row of the range that was handed over, without a header, so that it stands beside it. */
  | { readonly kind: 'column'; readonly label: string }
  /** Fields side by side in one row; takes at most a column of inputs. */
  | { readonly kind: 'row'; readonly fields: Fields }
  /** Two columns, label and value. */
  | { readonly kind: 'report'; readonly fields: Fields }
  /** A header row, then the rows. */
  | { readonly kind: 'table'; readonly fields: Fields };

/** A fitted figure. */
export interface Estimate {
  readonly value: number;
  /** Standard error; undefined where the data leave no freedom to tell. */
  readonly error: number | undefined;
}

/** One row: from `compute` in SI, from `calculate` in the fields' units. A number that the case does not have is undefined and shows as empty. */
export type Row<F> = {
  readonly [K in keyof F]: F[K] extends { text: true }
    ? string
    : F[K] extends { error: true }
      ? Estimate
      : number | undefined;
};

/** A whole answer, by the kind of the output: from `compute` in SI, from `calculate` in the output's units. */
export type Result<O> = O extends { kind: 'number' }
  ? number
  : O extends { kind: 'text' }
    ? string
    : O extends { kind: 'column' }
      ? readonly string[]
      : O extends { kind: 'row' | 'report'; fields: infer F }
        ? Row<F>
        : O extends { kind: 'table'; fields: infer F }
          ? readonly Row<F>[]
          : never;

/** No answer exists, and why: becomes #N/A. */
export interface NoAnswer {
  readonly none: string;
}

/** An input was refused, and why: becomes #VALUE!. */
export interface Refused {
  readonly refused: string;
}
