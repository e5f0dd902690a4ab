import { rankQuotes } from '../../cost/rankQuotes.js';
import { axisTitleOf } from '../fields.js';
import type { At } from '../layout.js';
import { withoutHeader } from '../place.js';
import type { SheetChart } from '../sheet.js';

export const quotesCharts = (at: At): readonly SheetChart[] => [
  {
    title: 'Cost per hL of the cheapest offers',
    kind: 'bars',
    across: { title: 'Offer' },
    upwards: axisTitleOf(rankQuotes, 'cost'),
    series: [
      {
        name: rankQuotes.output.fields.cost.label,
        across: withoutHeader(at('ranked.name')),
        upwards: withoutHeader(at('ranked.cost')),
      },
    ],
    place: at('ranked.picture'),
  },
];
