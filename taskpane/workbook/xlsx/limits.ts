const MEGABYTE = 1024 * 1024;

/** How much of a file is taken: enough for years of daily figures, too little to bring the page to a halt. */
export const LIMITS = {
  /** The file as it lies on the disk, in bytes. */
  packed: 20 * MEGABYTE,
  /** One part of it unpacked, and all that are read together. */
  part: 40 * MEGABYTE,
  unpacked: 100 * MEGABYTE,
  /** From this size on, parts are taken as far as each byte of the file stands for no more bytes than `dense`. */
  loose: 4 * MEGABYTE,
  /** Sheets with addresses and figures stand for 10 to 40 times their bytes; what stands for more is empty or a trap. */
  dense: 100,
  /** Parts in the file, read or not. */
  entries: 5000,
  sheets: 100,
  rows: 100_000,
  columns: 256,
  /** Cells of the whole workbook that hold anything, a look included. */
  cells: 400_000,
  /** Letters of all texts and formulas together: one text that many cells share counts in each. */
  characters: 20_000_000,
  /** Letters of the text in one cell, as spreadsheet programs have it. */
  text: 32_767,
  /** Letters of one formula, as spreadsheet programs have it. */
  formula: 8192,
  /** Operators in one formula, and calls or brackets in each other. */
  operators: 500,
  depth: 100,
  /** Places of one range in a formula. */
  range: 3_000_000,
  /** Looks that a file defines. */
  looks: 65_000,
  names: 5000,
  /** Values that one column of a filter lets through. */
  choices: 10_000,
  /** Rules for entries and conditional formats on one sheet. */
  rules: 1000,
  /** Cells of the whole workbook that have a rule for entries. */
  ruled: 50_000,
  /** Cells of the whole workbook that conditional formats look at, each counted as often as it has one. */
  judged: 200_000,
} as const;

export const megabytes = (bytes: number): number => Math.ceil((bytes / MEGABYTE) * 10) / 10;
