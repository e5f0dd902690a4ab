import type { CellContent } from './cell.js';

/** The used part of one sheet, as rows of cells. */
export interface SheetContents {
  readonly name: string;
  /** The row and the column, from 0, at which the tables begin. */
  readonly row: number;
  readonly column: number;
  /** What was entered: a formula from its equals sign on, or the value itself. */
  readonly formulas: readonly (readonly CellContent[])[];
  /** What the cells show; an error value is its code. */
  readonly values: readonly (readonly CellContent[])[];
}

/** A name that formulas can use: of the whole workbook, or of one sheet. */
export interface DefinedName {
  readonly name: string;
  readonly sheet?: string;
  /** The reference or formula behind it, with or without an equals sign. */
  readonly formula: string;
}

/** Everything in a workbook that a check has to look at. */
export interface WorkbookContents {
  /** The sheet that is shown. */
  readonly active: string;
  readonly sheets: readonly SheetContents[];
  readonly names: readonly DefinedName[];
  /** The sentence behind an error value, where the host can tell it; row and column are those of the sheet, from 0. */
  message?(sheet: string, row: number, column: number): string | undefined;
}

export interface ReadingOptions {
  /** Told how much has been read, from 0 to 1. */
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal;
}
