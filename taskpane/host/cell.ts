/** What a cell of a workbook holds; an error cell holds its code, such as `#N/A`. */
export type CellContent = number | string | boolean | null;

/** Rows of cells, all equally long. */
export type Cells = readonly (readonly CellContent[])[];
