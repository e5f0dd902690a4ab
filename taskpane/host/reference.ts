/** A rectangle of a sheet, counted from 0; whole rows or columns reach as far as the sheet is used. */
export interface RangeReference {
  readonly kind: 'range';
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly bottom: number | null;
  readonly right: number | null;
}

/** Where a formula takes a value from. `sheet` is the formula's own where the reference names none. */
export type Reference =
  | RangeReference
  /** All that one formula fills, as `A1#`. */
  | { readonly kind: 'spill'; readonly sheet: string; readonly row: number; readonly column: number }
  /** A defined name: the sheet's own before the workbook's. */
  | { readonly kind: 'name'; readonly sheet: string; readonly name: string }
  /** The body of a table, or one column of it. */
  | { readonly kind: 'table'; readonly table: string; readonly column?: string };
