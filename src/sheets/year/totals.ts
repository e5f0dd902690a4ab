import { filtrationCost } from '../../plan/filtrationCost.js';
import { formatOf, resultCell, shownUnit, text } from '../cells.js';
import { columnOf } from '../formula.js';
import { type At, gap, heading, type Line, type Mark, note } from '../layout.js';
import { across, columnNumber, sumOf } from './across.js';
import { BEERS } from './beers.js';
import { ITEMS, type Item, SHOWN, TOTAL } from './items.js';
import { computed, ofBeer, SIDES, withBeers } from './lines.js';
import { wideTitles } from './planOfYear.js';
import { savedLines } from './saved.js';

const digitsOf = ({ unit }: Item): number | undefined => (unit === 'money' ? 0 : unit === '' ? 1 : undefined);

/** The header row of the table: each beer’s call stands here and spills downward. */
const costHead = withBeers({ cells: () => [text('Per year', 'label')] }, (at) =>
  SIDES.flatMap((_, side) =>
    BEERS.map((__, beer) => ({
      formula: `=${columnOf(ofBeer(filtrationCost.id, at, side, beer), columnNumber(filtrationCost, 'perYear'))}`,
      style: 'heading' as const,
    })),
  ),
);

const costLine = (item: Item): Line => {
  const { shown, label, unit } = item;
  const format = formatOf(unit, digitsOf(item));
  return withBeers(
    {
      marks: Object.fromEntries([
        ...SIDES.map((side, index): [string, Mark] => [`total.${shown}.${side}`, { column: index + 1 }]),
        [`total.${shown}.saved`, { column: 4 }],
      ]),
      cells: (at) => [
        text(label, 'label'),
        ...SIDES.map((_, side) => resultCell(sumOf(at, `cost.${shown}.${side}`), unit, digitsOf(item))),
        text(shownUnit(unit), 'unit'),
        resultCell(`=${at(`total.${shown}.now`)}-${at(`total.${shown}.proposed`)}`, unit, digitsOf(item)),
        text('', 'note'),
        text('sum of the beers; saved is now − proposed', 'note'),
      ],
    },
    () => SIDES.flatMap(() => BEERS.map(() => ({ format }))),
    Object.fromEntries(SIDES.map((_, side): [string, Mark] => [`cost.${shown}.${side}`, across(side)])),
  );
};

const items = (at: At, side: string) => `${at(`total.${SHOWN[0]}.${side}`)}:${at(`total.${SHOWN[TOTAL - 1]}.${side}`)}`;

/** Below this it is rounding. */
const CENT = 0.01;

export const totalLines: readonly Line[] = [
  heading('The year, all beers'),
  wideTitles(['Item', 'Now', 'Proposed', 'Unit', 'Saved'], 'Where the figure comes from'),
  costHead,
  ...ITEMS.map(costLine),
  gap,
  ...savedLines,
  gap,
  heading('Does the year close?'),
  computed(
    ['itemsLeft', 'itemsLeftProposed'],
    'Sum of the items against the total',
    (at) => SIDES.map((side) => `=ROUND(ABS(SUM(${items(at, side)})-${at(`total.Total.${side}`)}),6)`),
    'money',
    'what is left over between the two; it must be nothing',
    2,
  ),
  computed(
    'savingLeft',
    'Saved by items against now − proposed',
    (at) => `=ROUND(ABS(${at('saved.Total.all')}-${at('total.Total.saved')}),6)`,
    'money',
    'what is left over between SAVING’s total and the difference of both totals above',
    2,
  ),
  {
    marks: { closes: { column: 1 } },
    cells: (at) => [
      text('The year', 'label'),
      {
        formula: `=IF(${at('itemsLeft')}+${at('itemsLeftProposed')}+${at('savingLeft')}<${CENT},"closes","does not close")`,
        style: 'result',
      },
    ],
  },
  note(`${filtrationCost.method}.`),
  gap,
];
