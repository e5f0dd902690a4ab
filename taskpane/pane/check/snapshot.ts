import type { Read } from '../../formula/evaluate.js';
import { referenceOf } from '../../formula/references.js';
import { Unknown } from '../../formula/unknown.js';
import type { CellContent, Cells } from '../../host/host.js';
import type { RangeReference, Reference } from '../../host/reference.js';
import type { SheetContents, WorkbookContents } from '../../host/workbookContents.js';

type Table = 'values' | 'formulas';

/** A workbook as it was read, answering as the workbook itself would. */
export class Snapshot {
  readonly #sheets: ReadonlyMap<string, SheetContents>;
  readonly #ranges = new Map<string, Cells>();

  constructor(readonly contents: WorkbookContents) {
    this.#sheets = new Map(contents.sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  }

  sheet(name: string): SheetContents | undefined {
    return this.#sheets.get(name.toLowerCase());
  }

  cell(table: Table, name: string, row: number, column: number): CellContent {
    const sheet = this.sheet(name);
    return sheet?.[table][row - sheet.row]?.[column - sheet.column] ?? null;
  }

  /** The rectangle that a name or a reference leads to; tables and `A1#` are the workbook's own. */
  rectangle(reference: Reference): RangeReference | undefined {
    if (reference.kind === 'range') return reference;
    if (reference.kind !== 'name') return undefined;
    const same = this.contents.names.filter(({ name }) => name.toLowerCase() === reference.name.toLowerCase());
    const own = same.find(({ sheet }) => sheet === reference.sheet) ?? same.find(({ sheet }) => sheet === undefined);
    const meant = own && referenceOf(own.formula.replace(/^=/, ''), own.sheet ?? reference.sheet);
    return meant && !(meant instanceof Unknown) && meant.kind === 'range' ? meant : undefined;
  }

  readonly read: Read = (reference) => {
    const range = this.rectangle(reference);
    const sheet = range && this.sheet(range.sheet);
    if (!range || !sheet) return undefined;
    const { top, left } = range;
    if (range.bottom === top && range.right === left) return [[this.cell('values', range.sheet, top, left)]];
    const key = JSON.stringify(range);
    const known = this.#ranges.get(key);
    if (known) return known;
    const bottom = range.bottom ?? Math.max(top, sheet.row + sheet.values.length - 1);
    const right =
      range.right ?? Math.max(left, sheet.column + Math.max(1, ...sheet.values.map((line) => line.length)) - 1);
    const cells = Array.from({ length: bottom - top + 1 }, (_, row) =>
      Array.from({ length: right - left + 1 }, (__, column) =>
        this.cell('values', range.sheet, top + row, left + column),
      ),
    );
    this.#ranges.set(key, cells);
    return cells;
  };
}
