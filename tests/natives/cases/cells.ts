/** The cells that the cases read, from A1 on: numbers, dates, texts, blanks, booleans and errors. */
export const CELLS: readonly (readonly (number | string | null)[])[] = [
  // A numbers, B numbers, C texts, D mixed, E dates, F sorted, G texts like numbers, H errors; J to L a list, M and N what
  // is asked of it.
  [3, 12, 'malt', 5, 45658, 10, '7', '=1/0', null, 'powder', 'dose', 'price', 'dose', 'powder'],
  [-1.5, 7, 'Hops', 'text', 45688, 20, '1e2', '=NA()', null, 'fine', 80, 2.5, '>90', 'fine'],
  [8, 9.5, 'yeast', null, 45716, 30, ' 5 ', 4, null, 'coarse', 120, 1.75, '<=80', 'c*'],
  [0, 2, 'water', '=TRUE', 46022, 40, 'x', 6, null, 'coarse', 95, 2],
  [8, 15, 'hop*', -2, 46387, 50, '', 8, null, 'middle', 100, 'none'],
  [null, null, null, null, null, null, null, null, null, 'medium', 80],
];
