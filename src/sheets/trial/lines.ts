import { text } from '../cells.js';
import { columnsOf } from '../columns.js';
import { figureLines } from '../figures.js';
import type { Line } from '../layout.js';

/** The trial log sets two runs side by side. */
export const columns = columnsOf(['Old powder', 'New powder']);

export const { answered, input, result, computed, row } = figureLines(columns);

/** A report of one column keeps the sheet's columns: the second figure stays empty. */
export function withoutSecond(line: Line): Line {
  return {
    ...line,
    cells: (at) => {
      const [label, figure, unit, ...rest] = line.cells(at);
      return [label, figure, text('', 'note'), unit, ...rest].filter((cell) => cell !== undefined);
    },
  };
}
