import { pixelsAcross } from '../../../src/sheets/paper.js';

/** Excel measures columns in points, of which 96 pixels have 72. */
export const points = (characters: number): number => pixelsAcross(characters) * 0.75;
