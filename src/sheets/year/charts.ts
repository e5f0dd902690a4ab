import { sensitivity } from '../../plan/sensitivity.js';
import { axisTitleOf } from '../fields.js';
import type { At } from '../layout.js';
import type { SheetChart } from '../sheet.js';
import { SIDES } from './lines.js';
import { guesses } from './spread.js';

export const yearCharts = (at: At): readonly SheetChart[] => [
  {
    title: 'Cost per hL of each beer, now and proposed',
    kind: 'bars',
    across: { title: 'Beer' },
    upwards: { title: 'Cost per hL' },
    series: SIDES.map((side) => ({
      name: side === 'now' ? 'Now' : 'Proposed',
      across: at('beers.names'),
      upwards: at(`beers.cost.${side}`),
    })),
    place: at('cost.picture'),
  },
  {
    title: 'How far the guesses that matter most move the cost per hL',
    kind: 'bars',
    across: { title: 'Guess' },
    upwards: axisTitleOf(sensitivity, 'change'),
    series: [
      {
        name: sensitivity.output.fields.change.label,
        across: guesses(at('sensitivity.item')),
        upwards: guesses(at('sensitivity.change')),
      },
    ],
    place: at('spread.picture'),
  },
];
