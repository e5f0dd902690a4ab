import { expect, it } from 'vitest';
import { calculateCells } from '../workbook/headless.js';
import type { Single } from './answers.js';

// Functions that LibreOffice 7.4 has not, against their definitions, worked out by hand. A blank is what no answer fills.
const CELLS = [
  [3, 'b', 10],
  [1, 'a', 20],
  [2, 'b', 30],
];

const CASES: readonly (readonly [formula: string, answer: readonly (readonly Single[])[]])[] = [
  [
    '=SEQUENCE(2,3,10,-1)',
    [
      [10, 9, 8],
      [7, 6, 5],
    ],
  ],
  ['=SEQUENCE(3)', [[1], [2], [3]]],
  ['=SORT(A1:A3)', [[1], [2], [3]]],
  [
    '=SORT(A1:C3,3,-1)',
    [
      [2, 'b', 30],
      [1, 'a', 20],
      [3, 'b', 10],
    ],
  ],
  ['=SORT({3,1,2},1,1,TRUE)', [[1, 2, 3]]],
  ['=SORTBY(B1:B3,A1:A3)', [['a'], ['b'], ['b']]],
  ['=SORTBY(A1:A3,B1:B3,1,C1:C3,-1)', [[1], [2], [3]]],
  ['=UNIQUE(B1:B3)', [['b'], ['a']]],
  ['=UNIQUE(B1:B3,FALSE,TRUE)', [['a']]],
  [
    '=FILTER(A1:C3,B1:B3="b")',
    [
      [3, 'b', 10],
      [2, 'b', 30],
    ],
  ],
  ['=FILTER(A1:A3,A1:A3>9,"none")', [['none']]],
  ['=FILTER(A1:A3,A1:A3>9)', [['#CALC!']]],
  [
    '=TAKE(A1:C3,2)',
    [
      [3, 'b', 10],
      [1, 'a', 20],
    ],
  ],
  ['=TAKE(A1:C3,-1,-2)', [['b', 30]]],
  [
    '=DROP(A1:C3,1,1)',
    [
      ['a', 20],
      ['b', 30],
    ],
  ],
  ['=DROP(A1:C3,-2)', [[3, 'b', 10]]],
  [
    '=CHOOSECOLS(A1:C3,3,1)',
    [
      [10, 3],
      [20, 1],
      [30, 2],
    ],
  ],
  ['=CHOOSEROWS(A1:C3,-1)', [[2, 'b', 30]]],
  [
    '=EXPAND({1,2},2,3,0)',
    [
      [1, 2, 0],
      [0, 0, 0],
    ],
  ],
  [
    '=HSTACK(A1:A3,C1:C3)',
    [
      [3, 10],
      [1, 20],
      [2, 30],
    ],
  ],
  ['=VSTACK(A1:A2,{7})', [[3], [1], [7]]],
  [
    '=HSTACK({1;2},{3})',
    [
      [1, 3],
      [2, '#N/A'],
    ],
  ],
  ['=TOCOL({1,2;3,4})', [[1], [2], [3], [4]]],
  ['=TOCOL({1,2;3,4},0,TRUE)', [[1], [3], [2], [4]]],
  ['=TOROW({1;2;3})', [[1, 2, 3]]],
  [
    '=WRAPROWS({1,2,3},2)',
    [
      [1, 2],
      [3, '#N/A'],
    ],
  ],
  [
    '=WRAPCOLS({1,2,3},2,0)',
    [
      [1, 3],
      [2, 0],
    ],
  ],
  [
    '=TEXTSPLIT("a-b;c-d","-",";")',
    [
      ['a', 'b'],
      ['c', 'd'],
    ],
  ],
  ['=TEXTBEFORE("body feed, g/hL",", ")', [['body feed']]],
  ['=TEXTAFTER("a-b-c","-",2)', [['c']]],
  ['=TEXTAFTER("a-b-c","-",-1)', [['c']]],
  ['=XLOOKUP(2,A1:A3,B1:C3)', [['b', 30]]],
  ['=XLOOKUP({1;9},A1:A3,C1:C3,"none")', [[20], ['none']]],
  ['=XMATCH(2,A1:A3)', [[3]]],
  ['=ARRAYTOTEXT({1,2;3,"a"})', [['1, 2, 3, a']]],
  ['=ARRAYTOTEXT({1,2;3,"a"},1)', [['{1,2;3,"a"}']]],
  ['=VALUETOTEXT("a",1)', [['"a"']]],
  ['=REGEXEXTRACT("lot 2025-017","[0-9]{4}")', [['2025']]],
  ['=REGEXREPLACE("a1b22","[0-9]+","#")', [['a#b#']]],
  ['=LET(x,SEQUENCE(3),SUM(x*x))', [[14]]],
  ['=SUM(SEQUENCE(2,2)*{1,10})', [[64]]],
];

it.each(CASES)('calculates by definition: %s', async (formula, expected) => {
  const calculated = await calculateCells([...CELLS, [formula]]);
  const found = Array.from({ length: expected.length + 1 }, (_, row) =>
    Array.from(
      { length: (expected[0]?.length ?? 0) + 1 },
      (__, column) => calculated.at(`${'ABCDE'[column]}${row + 4}`).value,
    ),
  );
  calculated.dispose();
  const blank = Array((expected[0]?.length ?? 0) + 1).fill(null);
  expect(found).toEqual([...expected.map((row) => [...row, null]), blank]);
});
