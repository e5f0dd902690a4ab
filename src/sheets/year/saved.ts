import { saving } from '../../plan/saving.js';
import { formatOf, resultCell, text } from '../cells.js';
import { call, columnOf } from '../formula.js';
import { heading, type Line } from '../layout.js';
import { acrossBeers, columnNumber, sumOf } from './across.js';
import { BEERS } from './beers.js';
import { rowsOf } from './items.js';
import { planOf, withBeers } from './lines.js';

const savedHead = withBeers({ cells: () => [text('Saved per year', 'label')] }, (at) =>
  BEERS.map((_, beer) => ({
    formula: `=${columnOf(call(saving.id, [at('year.labels'), planOf(at, 0, beer), planOf(at, 1, beer)]), columnNumber(saving, 'savedYear'))}`,
    style: 'heading' as const,
  })),
);

const savedLine = (label: string): Line =>
  withBeers(
    {
      marks: { [`saved.${label}.all`]: { column: 1 } },
      cells: (at) => [
        text(label, 'label'),
        resultCell(sumOf(at, `saved.${label}`), 'money', 0),
        text('', 'note'),
        text('money', 'unit'),
      ],
    },
    () => BEERS.map(() => ({ format: formatOf('money', 0) })),
    { [`saved.${label}`]: acrossBeers },
  );

export const savedLines: readonly Line[] = [
  heading('Where the saving comes from'),
  savedHead,
  ...rowsOf(saving).map(savedLine),
];
