/** What the fake workbook holds, for tests to look at and to arrange. */
export interface FakeBook {
  readonly sheets: Map<string, FakeSheet>;
  /** Names of the whole workbook, each a sheet and a rectangle on it. */
  readonly names: Map<string, FakeArea>;
  readonly tables: Map<string, { readonly area: FakeArea; readonly columns: readonly string[] }>;
  active: { sheet: string; row: number; column: number };
  /** While true, every request is refused, as in Excel while a cell is edited. */
  editing: boolean;
  /** Whether this Excel has the functions of dynamic arrays; without them a call to one is refused. */
  knowsSpills: boolean;
  /** Requests made so far. */
  syncs: number;
  /** What the add-in does for each entry of the ribbon, by its name. */
  readonly commands: Map<string, (event: { completed(): void }) => Promise<void>>;
  /** Whether the pane was asked to be shown. */
  paneShown: boolean;
  select(row: number, column: number): Promise<void>;
  calculated(): Promise<void>;
  listeners(): number;
}

/** A rectangle: sheet, row and column from 0, and how many of each. */
export type FakeArea = readonly [sheet: string, row: number, column: number, rows: number, columns: number];

export interface FakeSheet {
  /** By `row,column` from 0: what was put in, what a formula gives, the number format, validation and look. */
  readonly contents: Map<string, string | number>;
  readonly results: Map<string, unknown>;
  readonly formats: Map<string, string>;
  readonly validations: Map<string, Record<string, unknown>>;
  readonly looks: Map<string, Record<string, unknown>>;
  readonly widths: Map<number, number>;
  readonly names: Map<string, string>;
  /** How far the answer of a formula reaches, by its place. */
  readonly spills: Map<string, readonly [rows: number, columns: number]>;
  frozen: { readonly rows: number; readonly columns: number };
  printed: string;
  /** What was set of the page, of each conditional format and of each chart, by its path such as `title.text`. */
  readonly page: Record<string, unknown>;
  readonly conditions: Record<string, unknown>[];
  readonly charts: Record<string, unknown>[];
}

/** What was asked of a context and waits for its synchronisation. */
export type Queue = (() => void)[];

/** An error as Excel throws it. */
export type Coded = (code: string, message?: string) => Error;
