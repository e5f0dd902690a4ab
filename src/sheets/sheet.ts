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
  /** Titles and units over figures stand at the right, as figures do; the title of units is indented as they are. */
  readonly align?: 'right' | 'indented';
  readonly validation?: Validation;
  /** Explains the cell where the host can show notes. */
  readonly note?: string;
}

/** Marks the cells of a range in which a formula, written for the first of them, is true. */
export interface SheetCondition {
  readonly range: string;
  /** With `=` in front. Reads cells only: spreadsheet programs refuse an add-in’s functions in conditional formats. */
  readonly formula: string;
  readonly look: 'unusual' | 'refused' | 'example';
}

/** A line of a chart, or one set of its bars. */
export interface ChartSeries {
  readonly name: string;
  /** Address of the cell that holds the name, where one does. */
  readonly named?: string;
  /** Where the series is drawn otherwise than its chart. */
  readonly kind?: 'lines' | 'points';
  /** Address of the figures across, or of the bars’ names. */
  readonly across: string;
  /** Address of the figures upwards. */
  readonly upwards: string;
}

export interface SheetChart {
  readonly title: string;
  /** Lines between points, points alone, or bars. */
  readonly kind: 'lines' | 'points' | 'bars';
  /** Where bars stand upright in the workbook itself. */
  readonly upright?: true;
  readonly across: { readonly title: string };
  readonly upwards: { readonly title: string };
  readonly series: readonly ChartSeries[];
  /** The rectangle that the chart covers, where nothing else stands. */
  readonly place: string;
  /**
   * In pixels: how far inside the first cell of its place the chart begins, and how far inside the last one it ends.
   * Without it the chart fills its place.
   */
  readonly inset?: Readonly<Record<'left' | 'top' | 'right' | 'bottom', number>>;
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
  /** Columns at the left that stay in view. */
  readonly labelColumns?: number;
  readonly conditions?: readonly SheetCondition[];
  readonly charts?: readonly SheetChart[];
  /** How the page is turned in print; without it, as its columns need. */
  readonly print?: 'portrait' | 'landscape';
}
