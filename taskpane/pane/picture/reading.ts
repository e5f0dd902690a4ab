/** What the pane needs for formulas and their pictures; loaded once a cell with a formula, or beside the grid one with a text, is selected. */
export { readFormula } from '../../formula/readFormula.js';
export { ErrorOrigin } from '../explain/ErrorOrigin.js';
export { Explanation } from '../explain/Explanation.js';
export { TextNumber } from '../TextNumber.js';
export { PictureFigure } from './PictureFigure.js';
export { PictureOf } from './PictureOf.js';
