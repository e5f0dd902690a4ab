import { columnsOf } from '../columns.js';
import { figureLines } from '../figures.js';

/** The trial log sets two runs side by side. */
export const columns = columnsOf(['Old powder', 'New powder']);
export const { input, result, computed, row } = figureLines(columns);
