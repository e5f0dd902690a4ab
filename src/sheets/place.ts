/** Where in its row a named place begins, and how far it reaches. */
export interface Mark {
  readonly column: number;
  readonly rows?: number;
  readonly columns?: number;
}

/** The letters of a column, counted from 0: 0 is A, 26 is AA. */
export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnLetters(Math.floor(column / 26) - 1) + letter;
}

/** The address of a place that begins in a row, counted from 0. */
export function placeOf(row: number, { column, rows = 1, columns = 1 }: Mark): string {
  const first = `${columnLetters(column)}${row + 1}`;
  return rows === 1 && columns === 1 ? first : `${first}:${columnLetters(column + columns - 1)}${row + rows}`;
}

/** The same range without its first row, as where a table’s header stands in it. */
export const withoutHeader = (range: string): string =>
  range.replace(/^([A-Z]+)(\d+)/, (_, letters: string, row: string) => `${letters}${Number(row) + 1}`);
