import type { CellStyle, StarterSheet } from '../../src/sheets/sheet.js';

export type CellContent = number | string | boolean | null;

export interface Selection {
  readonly sheet: string;
  readonly address: string;
  readonly formula?: string;
  readonly value: CellContent;
  /** The sentence behind an error value, where the host can tell it. */
  readonly message?: string;
}

export type { CellStyle } from '../../src/sheets/sheet.js';

export interface BlockCell {
  /** Written as text whatever its first character. */
  readonly text?: string;
  readonly number?: number;
  /** A formula; `at` gives the A1 address of a place in the block. */
  readonly formula?: (at: (row: number, column: number) => string) => string;
  /** A number format in the worksheet's own notation, such as `0.0 %`. */
  readonly format?: string;
  readonly style?: CellStyle;
}

/** A rectangle of cells written at the selection. */
export interface Block {
  readonly rows: readonly (readonly BlockCell[])[];
}

/** Why nothing was written: there is something in the cells. The pane then offers to write all the same. */
export class NotEmpty extends Error {}

/** All that the pane asks of a workbook. Excel and the embedded workbook each have one. */
export interface Host {
  readonly name: 'excel' | 'embedded';
  selection(): Promise<Selection>;
  /** Calls the listener at each change of selection or of the selected cell's value; the result ends it. */
  onSelection(listener: (selection: Selection) => void): () => void;
  /**
   * Refuses with a `NotEmpty`, and a sentence, where it would overwrite cells that are not empty; a place of the
   * block that holds nothing has to be free too, since an answer may spill there.
   */
  write(block: Block, options?: { readonly overwrite?: boolean }): Promise<{ readonly address: string }>;
  insertSheet(sheet: StarterSheet): Promise<void>;
}
