import { CAUTIONS } from '../cautions.js';
import { costPerHl } from '../cost/costPerHl.js';
import { rankQuotes } from '../cost/rankQuotes.js';
import { dryMass } from '../moisture/dryMass.js';
import { moistureCredit } from '../moisture/moistureCredit.js';
import { ovenMoisture } from '../moisture/ovenMoisture.js';
import { sameSolids } from '../moisture/sameSolids.js';
import { FACTOR_SOURCE } from '../stabiliser/factors.js';
import { swapDose } from '../stabiliser/swapDose.js';
import { columnTitles } from './columns.js';
import { referenceMoisture } from './dosing/stabiliser.js';
import { call } from './formula.js';
import { caution, gap, heading, layOut, markedFirst, note, title } from './layout.js';
import { answerLines } from './quotes/answer.js';
import { CALCULATED, methods } from './quotes/calculated.js';
import { quotesCharts } from './quotes/charts.js';
import { GIVEN } from './quotes/given.js';
import { columns, computed, input, result } from './quotes/lines.js';
import { OFFERS, ROOM } from './quotes/offers.js';
import { quoteLines } from './quotes/table.js';
import { tableLines } from './reports.js';
import { HOW_TO_READ, INVENTED_SCENARIO, KIND_NOW, nowOf } from './scenario.js';

const FROM_FIRST = 'Invented: the landed price of the first quote below.';

/** Up to twelve offers of stabiliser: landed, dry, per hL at equal effect, ranked; and a credit for a moist delivery. */
export const quotes = layOut(
  {
    key: 'quotes',
    name: 'Quotes',
    summary:
      'Up to twelve offers of stabiliser: landed and dry price, cost per hL at equal effect, rank and break-even.',
    widths: [38, 22, 12, 24, ...GIVEN.slice(4).map(() => 12), 16, ...CALCULATED.map(() => 17)],
    headerRows: 1,
    labelColumns: 1,
    print: 'landscape',
    charts: quotesCharts,
  },
  [
    title('Quotes for a stabiliser: Nebbelgrund brewery'),
    note(INVENTED_SCENARIO),
    note(HOW_TO_READ),
    columnTitles(columns),
    ...answerLines,
    heading('The powder in use'),
    input('quoteKind', swapDose, 'fromKind', KIND_NOW, { label: 'Kind' }),
    input('quotePresentDose', swapDose, 'dose', nowOf('stabiliserDose'), { label: 'Dose as bought', digits: 1 }),
    input('quoteMoisture', sameSolids, 'moisture', nowOf('stabiliserMoisture')),
    input('quotePrice', costPerHl, 'price', nowOf('stabiliserPrice'), { label: 'Landed price', from: FROM_FIRST }),
    input('quotePosition', swapDose, 'position', swapDose.inputs.position.preset, {
      label: 'Position in the factor range',
      from: 'Your own choice: 0 is the low end, 1 the high end.',
    }),
    computed(
      'quoteUsualMoisture',
      'Moisture that the swap factors assume',
      (at) => `=${referenceMoisture(at('quoteKind'))}`,
      'fraction',
      FACTOR_SOURCE,
    ),
    result(
      'quoteDoseCorrected',
      sameSolids,
      { amount: 'quotePresentDose', moisture: 'quoteMoisture', newMoisture: 'quoteUsualMoisture' },
      { label: 'Dose at that moisture', unit: 'g/hL' },
    ),
    result('quotePresentCost', costPerHl, { dose: 'quotePresentDose', price: 'quotePrice' }),
    gap,
    heading('The quotes'),
    note(
      `Room for ${ROOM} offers; all ${OFFERS.length} are invented. An offer that is refused has to be mended or emptied before any is ranked. Duty is on the goods, not on freight; leave Own ladder dose empty where you have none.`,
    ),
    ...quoteLines,
    ...methods.map(([label, method]) => note(`${label}: ${method}.`)),
    gap,
    heading('Cheapest per hL first'),
    ...markedFirst(
      tableLines('ranked', rankQuotes, ROOM, (at) =>
        call(
          rankQuotes.id,
          ['names', 'landed', 'moisture', 'dryDose'].map((key) => at(`quotes.${key}`)),
        ),
      ),
      { 'ranked.picture': { column: 6, columns: 8, rows: ROOM + 1 } },
    ),
    note(`${rankQuotes.method}.`),
    gap,
    heading('Moisture credit on a delivery'),
    columnTitles(columns),
    input('deliveryMass', moistureCredit, 'mass', 10_000),
    input('deliveryPrice', moistureCredit, 'price', nowOf('stabiliserPrice')),
    input('agreedMoisture', moistureCredit, 'agreedMoisture', nowOf('stabiliserMoisture')),
    input('wetSample', ovenMoisture, 'wetSample', 20, { digits: 2 }),
    input('drySample', ovenMoisture, 'drySample', 6.6, { digits: 2 }),
    input('tare', ovenMoisture, 'tare', 0, { digits: 2 }),
    result('foundMoisture', ovenMoisture, { wetSample: 'wetSample', drySample: 'drySample', tare: 'tare' }),
    result('deliveryDry', dryMass, { mass: 'deliveryMass', moisture: 'foundMoisture' }),
    result(
      'deliveryCredit',
      moistureCredit,
      {
        mass: 'deliveryMass',
        price: 'deliveryPrice',
        agreedMoisture: 'agreedMoisture',
        foundMoisture: 'foundMoisture',
      },
      { digits: 2 },
    ),
    gap,
    heading('What to watch'),
    note('Equal dry silica is not equal effect: a ladder on your own beer settles the dose of each kind.'),
    note('A powder that also filters may save body feed. That is not in this ranking: see the sheets Dosing and Year.'),
    note('Agree with the supplier on the oven method and on who draws the sample before you claim a credit.'),
    caution(CAUTIONS.dust),
    caution(CAUTIONS['food law']),
  ],
);
