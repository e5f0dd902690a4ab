/** What the pane needs for formulas and their pictures; loaded once a cell with a formula is selected. */
export { readFormula } from '../../formula/readFormula.js';
export { Explanation } from '../explain/Explanation.js';
export { PictureOf } from './PictureOf.js';
