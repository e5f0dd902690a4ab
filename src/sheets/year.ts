import { CAUTIONS } from '../cautions.js';
import { blockLines } from './block.js';
import { columnTitles } from './columns.js';
import { caution, gap, heading, layOut, note, picture } from './layout.js';
import { opening } from './opening.js';
import { answerLines } from './year/answer.js';
import { beerList } from './year/beerList.js';
import { yearCharts } from './year/charts.js';
import { columns } from './year/lines.js';
import { sharedLines } from './year/shared.js';
import { spreadLines } from './year/spread.js';
import { totalLines } from './year/totals.js';

/** The beers of one filter through a year, now and proposed: what it costs, what it saves, and how sure that is. */
export const year = layOut(
  {
    key: 'year',
    name: 'Year',
    summary:
      'Beers through a year, up to 200: powder, cake, disposal, water, losses, downtime, the saving and how sure it is.',
    widths: [42, 16, 16, 16, 20, 20, 20, 22, 20, 22, 13, 13, 13, 13, 14, 15, 8, 9],
    headerRows: 1,
    labelColumns: 1,
    print: 'landscape',
    charts: yearCharts,
  },
  [
    ...opening('The year on one filter'),
    columnTitles(columns),
    ...answerLines,
    ...totalLines,
    ...sharedLines,
    gap,
    ...spreadLines,
    heading('What to watch'),
    note(
      'Downtime counts only where the filter is the bottleneck: set its cost to 0 if the brewery waits for something else.',
    ),
    note(
      'Permeabilities are fitted on one beer (sheet Trial log). Another beer brings other solids: fit it before you rely on it.',
    ),
    note('A saving that hangs on one guess deserves a trial of that guess first: see the list above.'),
    caution(CAUTIONS.dust),
    caution(CAUTIONS.pressure),
    gap,
    ...picture('cost.picture'),
    heading('The beers'),
    note(
      `Room for ${beerList.room} beers, one a row: type, paste or insert rows anywhere in the list, delete any, sort and filter it. What they share stands above.`,
    ),
    ...blockLines(beerList),
  ],
);
