/** Cases whose answers fill several cells: a function's arguments, then the rows and columns of its answer. */
export type ArrayFamily = Readonly<
  Record<string, readonly (readonly [given: string, rows: number, columns: number])[]>
>;

export const arrays: ArrayFamily = {
  FREQUENCY: [
    ['A1:A5,{0,5}', 3, 1],
    ['B1:B5,F1:F2', 3, 1],
  ],
  GROWTH: [
    ['B1:B5', 5, 1],
    ['B1:B5,F1:F5,{60;70}', 2, 1],
    ['B1:B5,F1:F5,{60;70},FALSE', 2, 1],
  ],
  LINEST: [
    ['A1:A5,F1:F5', 1, 2],
    ['B1:B5,A1:A5,TRUE,TRUE', 5, 2],
    ['B1:B5,A1:A5,FALSE,TRUE', 5, 2],
    ['F1:F5,A1:B5,TRUE,TRUE', 5, 3],
    ['A1:A5', 1, 2],
    ['A1:A4,F1:F5', 1, 1],
  ],
  LOGEST: [
    ['B1:B5,F1:F5', 1, 2],
    ['B1:B5,F1:F5,TRUE,TRUE', 5, 2],
    ['B1:B5,F1:F5,FALSE', 1, 2],
  ],
  MINVERSE: [
    ['{1,2;3,4}', 2, 2],
    ['{4,-1,2;0,3,1;5,2,1}', 3, 3],
    ['{1,2;2,4}', 1, 1],
  ],
  MMULT: [
    ['{1,2;3,4},{5,6;7,8}', 2, 2],
    ['A1:B3,{1;2}', 3, 1],
    ['A1:A3,B1:B3', 1, 1],
  ],
  'MODE.MULT': [['{1,2,2,3,3}', 2, 1]],
  MUNIT: [['3', 3, 3]],
  ROW: [['A2:A4', 3, 1]],
  COLUMN: [['B1:D1', 1, 3]],
  SQRT: [['A3:B5', 3, 2]],
  TRANSPOSE: [
    ['A1:B3', 2, 3],
    ['C1:C3', 1, 3],
  ],
  TREND: [
    ['B1:B5', 5, 1],
    ['B1:B5,F1:F5,{60;70}', 2, 1],
    ['B1:B5,F1:F5,F1:F3,FALSE', 3, 1],
    ['F1:F5,A1:B5,{1,2;3,4}', 2, 1],
  ],
};
