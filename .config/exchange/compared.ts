import type { Difference, Judged } from '../../tests/exchange/compare.js';

/** What became of one workbook. */
export interface Compared {
  readonly name: string;
  readonly maker: string;
  readonly facts: number;
  readonly differences: readonly Judged[];
  /** What openpyxl reads otherwise. */
  readonly openpyxl: readonly Judged[];
  /** What changes when the saved file is opened and saved once more. */
  readonly second: readonly Difference[];
  /** Values that LibreOffice calculated from the file and from the saved one, and where they are not the same. */
  readonly calculated: number;
  readonly otherwise: readonly Difference[];
}
