import type { Unit } from '../core/units.js';
import type { Declared } from './declared.js';
import type { At, Mark } from './layout.js';
import type { SheetCell } from './sheet.js';

/** A column that a person fills in; without a declaration it holds names. */
export interface Given {
  readonly key: string;
  readonly label: string;
  readonly declared?: Declared;
  readonly mayBeBlank?: boolean;
  readonly digits?: number;
  readonly help?: string;
}

/** A column that one formula fills, over the whole list. */
export interface Calculated {
  readonly key: string;
  readonly label: string;
  readonly unit: Unit;
  /** Above the column where it has no unit. */
  readonly head?: string;
  readonly digits?: number;
  formula(column: (key: string) => string, at: At): string;
}

/**
 * A list that grows: a title, a row of units in which every formula stands, the rows, and a last row that ends it. All
 * formulas read from the row of units to the last row, so that a row may be put in or taken out at any place between.
 */
export interface Block {
  readonly name: string;
  /** What a row is, as “offer”. */
  readonly what: string;
  readonly room: number;
  /**
   * Its rows are so many that a colour of each cell and a count of each row’s would take seconds: it is told by its
   * states alone.
   */
  readonly isLong?: true;
  readonly given: readonly Given[];
  readonly calculated: readonly Calculated[];
  readonly examples: readonly Readonly<Record<string, number | string | undefined>>[];
  /** Columns that together are of one row of the example and no other: all of them, in two parts or one. */
  readonly told: readonly (readonly string[])[];
  /** What one formula fills to the right of the list, from its row of units down. */
  readonly beside?: {
    readonly cells: (at: At) => readonly SheetCell[];
    readonly rows: readonly SheetCell[];
    readonly marks: (column: number) => Readonly<Record<string, Mark>>;
  };
  /** Rules of the list’s own, after all others: a condition, the column it is about, and what is said. */
  rules?(
    column: (key: string) => string,
    at: At,
  ): readonly (readonly [look: 'refused' | 'unusual', condition: string, key: string, words: string])[];
}
