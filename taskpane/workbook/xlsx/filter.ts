/** How a condition compares, in the words of the file format; where none is said, texts are matched by `*` and `?`. */
export const COMPARISONS = [
  ...(['equal', 'notEqual'] as const),
  ...(['lessThan', 'lessThanOrEqual', 'greaterThan', 'greaterThanOrEqual'] as const),
] as const;

export interface FilterCondition {
  readonly comparison?: (typeof COMPARISONS)[number];
  readonly value: string;
}

/** What a column of a filter lets through: one of these. */
export type Criterion =
  | { readonly kind: 'values'; readonly values: readonly string[]; readonly blank: boolean }
  | { readonly kind: 'conditions'; readonly conditions: readonly FilterCondition[]; readonly both: boolean }
  /** Cells on one of these grounds, as #rrggbb; the absent one is that of a cell without any. */
  | { readonly kind: 'fills'; readonly colours: readonly (string | undefined)[] }
  | { readonly kind: 'inks'; readonly colours: readonly string[] };

export interface Filter {
  /** The titles and the rows below them. */
  readonly range: string;
  readonly columns: readonly { /** On the sheet, from 0. */ readonly column: number; readonly criterion: Criterion }[];
  /** The rows that are hidden, from 0 and ascending; absent where that is to be found out. */
  readonly hidden?: readonly number[];
}

/** A file has no place for a choice of several colours. */
export const isWritable = (criterion: Criterion): boolean =>
  !('colours' in criterion) || criterion.colours.length === 1;

/** Whether a file with this workbook lacks what a filter asks for. */
export const leavesColours = ({ sheets }: { readonly sheets: readonly { readonly filter?: Filter }[] }): boolean =>
  sheets.some(({ filter }) => filter?.columns.some(({ criterion }) => !isWritable(criterion)));
