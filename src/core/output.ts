import type { Unit } from './units.js';

export type Field =
  /** `error` adds a row of its own for the standard error. */
  | { readonly label: string; readonly unit: Unit; readonly error?: true }
  | { readonly label: string; readonly text: true };
export type Fields = Readonly<Record<string, Field>>;

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

export interface Estimate {
  readonly value: number;
  /** Standard error; undefined where the data leave no freedom to tell. */
  readonly error: number | undefined;
}

/** One row in SI. A number that the case does not have is undefined and shows as empty. */
export type Row<F> = {
  readonly [K in keyof F]: F[K] extends { text: true }
    ? string
    : F[K] extends { error: true }
      ? Estimate
      : number | undefined;
};

/** What `compute` gives back, in SI. */
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
