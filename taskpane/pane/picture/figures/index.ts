import { feedFigures } from './feed.js';
import type { Figure } from './figure.js';
import { fitFigures } from './fits.js';
import { runFigures } from './run.js';
import { savingFigure } from './saving.js';
import { sensitivityFigure } from './sensitivity.js';
import { spreadFigure } from './spread.js';

/** The figure of every calculation that has one. */
export const FIGURES: ReadonlyMap<string, Figure> = new Map<string, Figure>([
  ...runFigures,
  ...feedFigures,
  ...fitFigures,
  savingFigure,
  spreadFigure,
  sensitivityFigure,
]);
