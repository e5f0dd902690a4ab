import type { CellStyle, StarterSheet } from '../../src/sheets/sheet.js';
import type { CellContent, Cells } from './cell.js';
import type { RangeReference, Reference } from './reference.js';
import type { ReadingOptions, WorkbookContents } from './workbookContents.js';

export interface Selection {
  readonly sheet: string;
  readonly address: string;
  readonly formula?: string;
  /** The cell whose formula fills this one, where its answer spills into it. */
  readonly spilledFrom?: { readonly place: RangeReference; readonly formula: string };
  readonly value: CellContent;
  /** The sentence behind an error value, where the host can tell it. */
  readonly message?: string;
  /** A formula of a file whose last value stands here, since this workbook cannot calculate it. */
  readonly kept?: string;
  /** What a starter sheet says of the cell, where the workbook itself shows no such notes. */
  readonly note?: string;
}

export type { CellStyle } from '../../src/sheets/sheet.js';
export type { CellContent, Cells } from './cell.js';

export interface BlockCell {
  /** Written as text whatever its first character. */
  readonly text?: string;
  readonly number?: number;
  /** A formula; `at` gives the A1 address of a place in the block. */
  readonly formula?: (at: (row: number, column: number) => string) => string;
  /** A number format in the worksheet's own notation, such as `0.0 %`. */
  readonly format?: string;
  readonly style?: CellStyle;
  /** How many characters an answer will spill here. */
  readonly room?: number;
}

/** A rectangle of cells written at the selection. */
export interface Block {
  readonly rows: readonly (readonly BlockCell[])[];
}

/** What became of a block of texts that look like numbers. */
export interface Turned {
  /** The rectangle around the cells that hold numbers now. */
  readonly place: RangeReference;
  readonly count: number;
  /** Texts among them that no number was found in. */
  readonly left: number;
  /** The text that showed another decimal mark than the language has. */
  readonly shownBy?: string;
}

/** All that the pane asks of a workbook. Excel and the embedded workbook each have one. Refusals are a `Refusal`. */
export interface Host {
  readonly name: 'excel' | 'embedded';
  selection(): Promise<Selection>;
  /** Calls the listener at each change of selection or of the selected cell's value; the result ends it. */
  onSelection(listener: (selection: Selection) => void): () => void;
  /**
   * What stands in each place, all read at once. An error cell is its code, such as `#N/A`; a place that the
   * workbook does not have is undefined.
   */
  read(references: readonly Reference[]): Promise<readonly (Cells | undefined)[]>;
  /**
   * Refuses with a `NotEmpty` where it would overwrite cells that are not empty; a place of the
   * block that holds nothing has to be free too, since an answer may spill there.
   */
  write(block: Block, options?: { readonly overwrite?: boolean }): Promise<{ readonly address: string }>;
  insertSheet(sheet: StarterSheet): Promise<void>;
  /** Reads every sheet in a few bulk reads. Rejects with the signal's reason once it is aborted. */
  readAll(options?: ReadingOptions): Promise<WorkbookContents>;
  /**
   * Turns the texts in the table around a place, or around the selected cell, that look like numbers into numbers, as
   * one step. Excel has its own way.
   */
  turnIntoNumbers?(place?: RangeReference): Promise<Turned>;
  /** Shows the place behind a reference and selects it. */
  goTo(reference: Reference): Promise<void>;
  /** Puts a copy of the shown sheet beside it, in which formulas are values. Its name gets the ending. */
  copyWithValues(ending: string): Promise<{ readonly name: string }>;
}
