import type { StarterSheet } from '../../src/sheets/sheet.js';

/** Pixels of a column, as spreadsheet programs reckon them from characters in their usual font. */
const pixels = (characters: number) => 7 * characters + 5;

/** Length of A4's and Letter's sides in inches, less the usual margins of 0.7 inches, at 96 pixels an inch. */
const room = (inches: number) => 96 * (inches - 1.4);
const ACROSS = { landscape: Math.min(room(11.69), room(11)), portrait: Math.min(room(8.27), room(8.5)) };

/** The scale at which a sheet prints when it is made one page wide, on the narrower of both papers. */
export const printedScale = ({ widths, print = 'portrait' }: StarterSheet): number =>
  Math.min(1, ACROSS[print] / widths.map(pixels).reduce((sum, one) => sum + one, 0));
