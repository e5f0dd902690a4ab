import { answer, type Line } from '../layout.js';
import { computed, SIDES, withoutBeers } from './lines.js';

export const answerLines: readonly Line[] = answer(
  [
    computed(
      ['yearTotal', 'yearTotalProposed'],
      'Cost of filtration in the year, all beers',
      (at) => SIDES.map((side) => `=${at(`total.Total.${side}`)}`),
      'money',
      'total of the table “The year, all beers” below',
      0,
    ),
    computed(
      ['', 'yearSaved'],
      'Saved in the year, all beers',
      (at) => `=${at('yearTotal')}-${at('yearTotalProposed')}`,
      'money',
      'now − proposed; below 0 it gets dearer',
      0,
    ),
    computed(
      ['', 'yearChance'],
      'Chance that the beer chosen saves',
      (at) => `=${at('saving.chance.0')}`,
      'fraction',
      'from the part “How sure is the saving?” below, of one beer: choose it by its number in the list',
    ),
  ].map(withoutBeers),
);
