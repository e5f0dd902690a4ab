import { type Matrix, widthOf } from './cells.js';

/** What one answer of a call may hold at most: more would freeze the sheet before it filled it. */
const MOST_CELLS = 4_194_304;

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

export const shapeOf = (matrix: Matrix): Shape => ({ rows: matrix.length, columns: widthOf(matrix) });

export const cellsOf = ({ rows, columns }: Shape): number => rows * columns;

/** The shape that ranges combine to, as the worksheet's own operators do it. */
export function combine(shapes: readonly Shape[]): Shape {
  let rows = 1;
  let columns = 1;
  for (const shape of shapes) {
    if (shape.rows > rows) rows = shape.rows;
    if (shape.columns > columns) columns = shape.columns;
  }
  return { rows, columns };
}

export function tooLarge(shape: Shape): string | undefined {
  const cells = cellsOf(shape);
  return cells > MOST_CELLS
    ? `The ranges combine to ${shape.rows} rows × ${shape.columns} columns; one call answers at most ${MOST_CELLS} cells.`
    : undefined;
}

/** Where a place of the answer stands in one range; −1 where the range does not reach it. */
export function placeIn({ rows, columns }: Shape, row: number, column: number): number {
  const ownRow = rows === 1 ? 0 : row;
  const ownColumn = columns === 1 ? 0 : column;
  return ownRow < rows && ownColumn < columns ? ownRow * columns + ownColumn : -1;
}

/** Whether a range reaches every place of the whole. */
export const covers = (own: Shape, whole: Shape): boolean =>
  (own.rows === 1 || own.rows === whole.rows) && (own.columns === 1 || own.columns === whole.columns);

export const outside = (label: string, { rows, columns }: Shape): string =>
  `This place lies outside ${label}, which has ${rows} rows × ${columns} columns.`;
