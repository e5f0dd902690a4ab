/** No name, unit or label is longer; a cell may hold 32,767 letters. */
export const LONGEST_NAME = 255;

/**
 * Whether what was found for a cell is worth remembering under it. Engines give long texts of one length the same hash,
 * so that a Map of them is searched letter by letter.
 */
export const isMemorable = (cell: unknown): boolean => typeof cell !== 'string' || cell.length <= LONGEST_NAME;
