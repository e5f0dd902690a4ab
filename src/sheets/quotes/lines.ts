import { columnsOf } from '../columns.js';
import { figureLines } from '../figures.js';

/** Outside its tables the quotes sheet has one column of figures. */
export const columns = columnsOf(['Figure']);
export const { answered, computed, input, result } = figureLines(columns);
