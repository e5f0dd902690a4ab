/** A starter sheet as data: what stands in which cell. It knows no host and no file format. */
export type CellStyle = 'title' | 'heading' | 'label' | 'input' | 'result' | 'unit' | 'note' | 'caution';

export interface Validation {
  readonly kind: 'number' | 'list';
  /** Least and most, in the cell's unit. */
  readonly limit?: readonly [number, number];
  readonly of?: readonly string[];
  /** The sentence that a refused entry shows. */
  readonly message: string;
}

export interface SheetCell {
  /** Written as text whatever its first character. */
  readonly text?: string;
  readonly number?: number;
  /** In the worksheet's own English notation, with `=` in front and addresses of this sheet. */
  readonly formula?: string;
  /** A number format in the worksheet's own notation. */
  readonly format?: string;
  readonly style?: CellStyle;
  readonly validation?: Validation;
  /** Explains the cell where the host can show notes. */
  readonly note?: string;
}

export interface StarterSheet {
  readonly key: string;
  /** The tab's name. */
  readonly name: string;
  readonly summary: string;
  /** Width of each column in characters. */
  readonly widths: readonly number[];
  readonly rows: readonly (readonly SheetCell[])[];
  /** Defined names: name → address on this sheet. */
  readonly names: Readonly<Record<string, string>>;
  /** Rows at the top that stay in view and repeat in print. */
  readonly headerRows: number;
}
