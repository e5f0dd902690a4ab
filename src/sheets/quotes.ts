import { CAUTIONS } from '../cautions.js';
import { rankQuotes } from '../cost/rankQuotes.js';
import { blockLines } from './block.js';
import { columnTitles } from './columns.js';
import { caution, gap, heading, layOut, note, picture } from './layout.js';
import { opening } from './opening.js';
import { SOURCE_TITLE } from './provenance.js';
import { answerLines } from './quotes/answer.js';
import { CALCULATED, methods } from './quotes/calculated.js';
import { quotesCharts } from './quotes/charts.js';
import { deliveryLines } from './quotes/delivery.js';
import { GIVEN } from './quotes/given.js';
import { inUseLines } from './quotes/inUse.js';
import { columns } from './quotes/lines.js';
import { offerList } from './quotes/offerList.js';

/** Offers of stabiliser, as many as there are: landed, dry, per hL at equal effect, ranked; and a credit for a moist delivery. */
export const quotes = layOut(
  {
    key: 'quotes',
    name: 'Quotes',
    summary: 'Offers of stabiliser, up to 200: landed and dry price, cost per hL at equal effect, rank and break-even.',
    widths: [
      34,
      23,
      12,
      12,
      SOURCE_TITLE.length,
      ...GIVEN.slice(4).map(() => 10),
      16,
      ...CALCULATED.map(() => 13),
      8,
      8,
      8,
      2,
      24,
      10,
    ],
    headerRows: 1,
    labelColumns: 1,
    print: 'landscape',
    charts: quotesCharts,
  },
  [
    ...opening('Quotes for a stabiliser'),
    columnTitles(columns),
    ...answerLines,
    ...inUseLines,
    ...deliveryLines,
    heading('What to watch'),
    note('Equal dry silica is not equal effect: a ladder on your own beer settles the dose of each kind.'),
    note('A powder that also filters may save body feed. That is not in this ranking: see the sheets Dosing and Year.'),
    note('Agree with the supplier on the oven method and on who draws the sample before you claim a credit.'),
    caution(CAUTIONS.dust),
    caution(CAUTIONS['food law']),
    gap,
    ...picture('ranked.picture'),
    heading('The quotes'),
    note(
      `Room for ${offerList.room} offers, one a row: type, paste or insert rows anywhere in the list, delete any, sort and filter it. Duty is on the goods, not on freight; leave Own ladder dose empty where you have none.`,
    ),
    ...methods.map(([label, method]) => note(`${label}: ${method}.`)),
    note(`Right of the list: ${rankQuotes.method}.`),
    ...blockLines(offerList),
  ],
);
