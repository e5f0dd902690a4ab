import { CAUTIONS } from '../cautions.js';
import { columnTitles, widthsOf } from './columns.js';
import { answerLines } from './dosing/answer.js';
import { dosingCharts } from './dosing/charts.js';
import { costLines } from './dosing/cost.js';
import { feedLines } from './dosing/feed.js';
import { columns } from './dosing/lines.js';
import { runLines } from './dosing/run.js';
import { stabiliserLines } from './dosing/stabiliser.js';
import { watchLines } from './dosing/watch.js';
import { caution, gap, layOut } from './layout.js';
import { opening } from './opening.js';

/** One beer on one filter before and after a swap of stabiliser: doses, feed, slurry, tanks, run and powder cost. */
export const dosing = layOut(
  {
    key: 'dosing',
    name: 'Dosing',
    summary:
      'One beer on one filter, now and after a swap of stabiliser: doses, precoat, body feed, pump, tanks, run and powder cost.',
    widths: widthsOf(columns),
    headerRows: 4,
    print: 'landscape',
    charts: dosingCharts,
  },
  [
    ...opening('Dosing sheet: one beer on one filter'),
    columnTitles(columns),
    ...answerLines,
    ...stabiliserLines,
    gap,
    ...feedLines,
    gap,
    ...runLines,
    gap,
    ...costLines,
    gap,
    ...watchLines,
    caution(CAUTIONS.dust),
    caution(CAUTIONS.pressure),
    caution(CAUTIONS['food law']),
  ],
);
