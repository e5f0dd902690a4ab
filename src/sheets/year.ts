import { CAUTIONS } from '../cautions.js';
import { caution, gap, heading, layOut, note, title } from './layout.js';
import { HOW_TO_READ, INVENTED_SCENARIO } from './scenario.js';
import { answerLines } from './year/answer.js';
import { yearCharts } from './year/charts.js';
import { headLine, widths } from './year/lines.js';
import { beerLines } from './year/list.js';
import { planLines } from './year/planOfYear.js';
import { sensitivityLines, spreadLines } from './year/spread.js';
import { totalLines } from './year/totals.js';

/** Ten beers on one filter through a year, now and proposed: what it costs, what it saves, and how sure that is. */
export const year = layOut(
  {
    key: 'year',
    name: 'Year',
    summary:
      'Ten beers through a year: powder, cake, disposal, water, losses, downtime, the saving and how sure it is.',
    widths,
    headerRows: 2,
    labelColumns: 1,
    print: 'landscape',
    charts: yearCharts,
  },
  [
    title('The year on filter 2: Nebbelgrund brewery'),
    headLine,
    note(INVENTED_SCENARIO),
    note(HOW_TO_READ),
    ...answerLines,
    ...beerLines,
    ...planLines,
    ...totalLines,
    ...spreadLines,
    heading('What to watch'),
    note(
      'Downtime counts only where the filter is the bottleneck: set its cost to 0 if the brewery waits for something else.',
    ),
    note(
      'Permeabilities are fitted on beer 3 (sheet Trial log). Another beer brings other solids: fit it before you rely on it.',
    ),
    note('A saving that hangs on one guess deserves a trial of that guess first: see the list below.'),
    caution(CAUTIONS.dust),
    caution(CAUTIONS.pressure),
    gap,
    ...sensitivityLines,
  ],
);
