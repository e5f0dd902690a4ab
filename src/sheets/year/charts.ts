import { savingSensitivity } from '../../plan/savingSensitivity.js';
import { areaOf, placeAt } from '../area.js';
import { axisTitleOf } from '../fields.js';
import type { At } from '../layout.js';
import type { SheetChart } from '../sheet.js';
import { BEERS } from './beers.js';
import { SIDES } from './lines.js';
import { guesses } from './spread.js';

/** The first rows of a list, below its units. */
const firstRows = (range: string): string => {
  const { row, column } = areaOf(range);
  return `${placeAt({ row: row + 1, column })}:${placeAt({ row: row + BEERS.length, column })}`;
};

export const yearCharts = (at: At): readonly SheetChart[] => [
  {
    title: 'Cost per hL of the first beers of the list, now and proposed',
    kind: 'bars',
    across: { title: 'Beer' },
    upwards: { title: 'Cost per hL' },
    series: SIDES.map((said, side) => ({
      name: said === 'now' ? 'Now' : 'Proposed',
      across: firstRows(at('beers.name')),
      upwards: firstRows(at(`beers.cost.${side}`)),
    })),
    place: at('cost.picture'),
  },
  {
    title: 'How far the guesses that matter most move the saving',
    kind: 'bars',
    across: { title: 'Guess' },
    upwards: axisTitleOf(savingSensitivity, 'change'),
    series: [
      {
        name: savingSensitivity.output.fields.change.label,
        across: guesses(at('sensitivity.item')),
        upwards: guesses(at('sensitivity.change')),
      },
    ],
    place: at('spread.picture'),
  },
];
