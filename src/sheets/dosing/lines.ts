import { columnsOf } from '../columns.js';
import { figureLines } from '../figures.js';

/** The dosing sheet sets two columns of figures side by side. */
export const columns = columnsOf(['Now', 'Proposed']);
export const { answered, input, result, computed, row } = figureLines(columns);
