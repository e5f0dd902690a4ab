import type { SheetChart, SheetCondition, Validation } from '../../../src/sheets/sheet.js';
import type { CellContent } from '../../host/cell.js';
import type { Shape } from './arrayShape.js';
import type { Alignment, BookLook } from './bookLook.js';
import type { Filter } from './filter.js';
import type { Attributes, PageSetup } from './pageSetup.js';

/** One cell, as a file keeps it. An absent value with a formula means that it was never calculated. */
export interface BookCell {
  /** The value, or the last answer of the formula. */
  readonly value?: CellContent;
  /** The error that stands in the place of a value, such as `#N/A`. */
  readonly error?: string;
  /** In the worksheet's own English notation, with `=` in front and add-in functions as `POWDER.ID`. */
  readonly formula?: string;
  /** The range that the formula's answer fills, where it is more than this cell. */
  readonly spill?: string;
  /** How many rows and columns the answer of an array formula of the older kind fills in a file, whatever it has. */
  readonly fixed?: Shape;
  /** A formula that the grid cannot calculate, in the file's words: the value is the last one that the file had. */
  readonly kept?: string;
  /** A number format in the worksheet's own notation. */
  readonly format?: string;
  readonly look?: BookLook;
  readonly align?: Alignment;
  readonly validation?: Validation;
  /** What else the file says of the cell's rule: how an entry is refused, titles, and the like. */
  readonly rule?: Attributes;
  /** Explains the cell, as a hint of its rule. */
  readonly note?: string;
  /** What someone wrote about the cell. */
  readonly remark?: string;
}

/** A name as the file has it. */
export interface KeptName {
  readonly name: string;
  /** What it stands for, in the file's words. */
  readonly text: string;
  /** The one sheet on which it is known. */
  readonly scope?: string;
  readonly hidden?: boolean;
}

export interface BookSheet {
  readonly name: string;
  /** Rows of cells; rows and places without anything in them are absent. */
  readonly rows: readonly (readonly (BookCell | undefined)[] | undefined)[];
  /** Width of each column in characters, where it is not the usual one. */
  readonly widths: readonly (number | undefined)[];
  /** Height of each row in points, where it is not the usual one. */
  readonly heights?: readonly (number | undefined)[];
  /** The rows and columns that are hidden by hand, from 0 and ascending. */
  readonly hiddenRows?: readonly number[];
  readonly hiddenColumns?: readonly number[];
  /** Whether its tab is hidden, and if so whether other programs offer to show it. */
  readonly hidden?: 'hidden' | 'veryHidden';
  /** The colour of its tab, as #rrggbb. */
  readonly tab?: string;
  /** How large it is shown, where 1 is the usual size. */
  readonly zoom?: number;
  /** Where no lines are shown between its cells. */
  readonly plain?: true;
  /** Names of places on this sheet: name → address. */
  readonly names: Readonly<Record<string, string>>;
  /** Rows at the top that stay in view and repeat in print. */
  readonly headerRows: number;
  /** Columns at the left that stay in view. */
  readonly labelColumns?: number;
  readonly filter?: Filter;
  readonly conditions?: readonly SheetCondition[];
  readonly charts?: readonly SheetChart[];
  /** The set-up of its print, where a file or a starter sheet brought one. */
  readonly page?: PageSetup;
}

/** The sheet that is shown first: the active one, unless it is hidden. */
export function shownSheetOf({ sheets, active }: Book): number {
  const found = sheets.findIndex(({ name, hidden }) => name === active && !hidden);
  return Math.max(0, found >= 0 ? found : sheets.findIndex(({ hidden }) => !hidden));
}

/** A workbook between the grid and a file, in the words of neither. */
export interface Book {
  readonly sheets: readonly BookSheet[];
  /** The sheet that is shown first. */
  readonly active?: string;
  /** Names that stand for one value, or a calculation, instead of a place: name → its formula. */
  readonly values?: Readonly<Record<string, string>>;
  /** Of all these names those that are known on one sheet only: name → that sheet. */
  readonly scopes?: Readonly<Record<string, string>>;
  /** Names of the file that the grid cannot use. */
  readonly keptNames?: readonly KeptName[];
}
