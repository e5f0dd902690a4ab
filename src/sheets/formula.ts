/** A call of a worksheet function, with the arguments as a formula writes them. */
export const call = (id: string, args: readonly string[]): string => `POWDER.${id}(${args.join(',')})`;

/** One column of an answer that has several, whole. */
export const columnOf = (answer: string, column: number): string => `INDEX(${answer},0,${column})`;

/**
 * An answer of one column as so many rows. Where it is an error, all of them show it: alone it would leave the others
 * blank, and what reads them would take them for 0.
 */
export const inEachRow = (answer: string, rows: number): string =>
  `IF({${Array.from({ length: rows }, () => 1).join(';')}},${answer})`;

/** The figures of a column, where the columns beside it have some, too: one below the other, without gaps. */
export const figuresIn = (range: string, beside: readonly string[] = []): string =>
  `FILTER(${range},${[range, ...beside].map((one) => `ISNUMBER(${one})`).join('*')})`;
