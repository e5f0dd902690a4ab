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

/**
 * The verdict on each of a range’s figures by the declared input that it feeds; nothing where a cell is blank. Asked by
 * its length, since some programs take 0 for a blank in a comparison with nothing.
 */
export const judgement = (cells: string, { id }: { readonly id: string }, label: string): string =>
  `=IF(LEN(${cells})=0,"",${call('RANGECHECK', [`"${id}"`, `"${label}"`, cells])})`;

/** How many figures of a range are not usual, in one call. `judged` answers with a verdict for each. */
export const remarksIn = (judged: string): string => `=SUMPRODUCT(--(LEFT(${judged},5)<>"usual"))`;
