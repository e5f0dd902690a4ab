import { columnsOf } from '../columns.js';
import { figureLines } from '../figures.js';

/** The year sets two columns of figures side by side. */
export const columns = columnsOf(['Now', 'Proposed']);
export const { answered, computed } = figureLines(columns);

export const SIDES = ['now', 'proposed'] as const;
