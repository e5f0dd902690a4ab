/** The letters of a column, counted from 0: 0 is A, 26 is AA. */
export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnLetters(Math.floor(column / 26) - 1) + letter;
}

/** The A1 address of a cell, row and column counted from 0. */
export const a1 = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;
