import { columnLetters } from '../../src/sheets/place.js';

export { columnLetters };

/** The same place with a dollar sign before each column and row. */
export const fixed = (place: string): string => place.replaceAll('$', '').replace(/[A-Z]+|\d+/gi, '$$$&');

/** The A1 address of a cell, row and column counted from 0. */
export const a1 = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;
