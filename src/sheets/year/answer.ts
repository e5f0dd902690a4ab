import { text } from '../cells.js';
import { answer, type Line, restingOn } from '../layout.js';
import { examplesLine } from '../opening.js';
import { beerList } from './beerList.js';
import { answered, SIDES } from './lines.js';
import { beersLine } from './totals.js';

const OF_LIST = ['beers.judged'];

/** A chance that is not certain is never shown as 100 %. */
const asChance = (place: string): string =>
  `IF(${place}>0.999,"above 99.9 %",IF(${place}<0.001,"below 0.1 %",ROUND(100*${place},1)&" %"))`;

const ofOneBeer = (line: Line, words: (beer: string) => string): Line => ({
  ...line,
  cells: (at) => [{ formula: `=${words(at('chosenBeer'))}`, style: 'label' }, ...line.cells(at).slice(1)],
});

export const answerLines: readonly Line[] = answer([
  restingOn(
    answered(
      ['yearTotal', 'yearTotalProposed'],
      'Cost of filtration in the year, all beers',
      (at) => SIDES.map((said) => `=${at(`total.Total.${said}`)}`),
      'money',
      'total of the table “The year, all beers” below',
      0,
    ),
    OF_LIST,
  ),
  restingOn(
    answered(
      ['', 'yearSaved'],
      'Saved in the year, all beers',
      (at) => `=${at('total.Total.saved')}`,
      'money',
      'now − proposed; below 0 it gets dearer',
      0,
    ),
    OF_LIST,
  ),
  beersLine,
  examplesLine([beerList.name]),
  { cells: () => [text('One beer alone', 'heading')] },
  ofOneBeer(
    answered(
      ['', 'oneSaving'],
      '',
      (at) => `=${at('saving.mean.0')}`,
      'money',
      'mean of the part “How sure is the saving?” below, of the beer that is named there',
      0,
    ),
    (beer) => `"Saved in the year by "&${beer}`,
  ),
  ofOneBeer(
    answered(
      ['', 'yearChance'],
      '',
      (at) => `=${asChance(at('saving.chance.0'))}`,
      '',
      'that beer’s, and not that of all beers together: their figures may be off together',
    ),
    (beer) => `"Chance that "&${beer}&" saves"`,
  ),
]);
