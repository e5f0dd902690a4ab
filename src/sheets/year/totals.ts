import { labelled } from '../../core/wording.js';
import { filtrationCost } from '../../plan/filtrationCost.js';
import { formatOf, resultCell, shownUnit, text } from '../cells.js';
import { columnOf } from '../formula.js';
import { type At, gap, heading, type Line, type Mark, marked, note, titles, UNIT } from '../layout.js';
import { acrossBeers, columnNumber, sumOf } from './across.js';
import { BEERS } from './beers.js';
import { ITEMS, type Item, SHOWN, TOTAL } from './items.js';
import { beerName, computed, ofBeer, SIDES, withBeers } from './lines.js';
import { savedLines } from './saved.js';

const digitsOf = ({ unit }: Item): number | undefined => (unit === 'money' ? 0 : unit === '' ? 1 : undefined);

/** The header row of the table: each beer’s call stands here and spills downward. */
const costHead = (side: number): Line =>
  withBeers({ cells: () => [text('Per year', 'label')] }, (at) =>
    BEERS.map((_, beer) => ({
      formula: `=${columnOf(ofBeer(filtrationCost.id, at, side, beer), columnNumber(filtrationCost, 'perYear'))}`,
      style: 'heading' as const,
    })),
  );

/** Sums over the beers of both sides, and what is saved; they read the tables of both. */
const sumLine = (item: Item): Line => {
  const { shown, label, unit } = item;
  return {
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
  };
};

const labelLine = ({ label, unit }: Item): Line => ({
  cells: () => [text(unit === '' || unit === 'money' ? label : labelled(label, unit), 'label')],
});

const costLine = (item: Item, side: number): Line =>
  withBeers(
    side === 0 ? sumLine(item) : labelLine(item),
    () => BEERS.map(() => ({ format: formatOf(item.unit, digitsOf(item)) })),
    { [`cost.${item.shown}.${side}`]: acrossBeers },
  );

const items = (at: At, side: string) => `${at(`total.${SHOWN[0]}.${side}`)}:${at(`total.${SHOWN[TOTAL - 1]}.${side}`)}`;

/** Below this it is rounding. */
const CENT = 0.01;

export const totalLines: readonly Line[] = [
  heading('The year, all beers'),
  titles(['Item', 'Now', 'Proposed', UNIT, 'Saved', '', ...BEERS.map((_, beer) => `${beerName(beer)} now`)], [1, 16]),
  costHead(0),
  ...ITEMS.map((item) => costLine(item, 0)),
  gap,
  titles(['Item', '', '', '', '', '', ...BEERS.map((_, beer) => `${beerName(beer)} proposed`)], [1, 16]),
  marked(costHead(1), { 'cost.picture': { column: 1, columns: 5, rows: ITEMS.length + 1 } }),
  ...ITEMS.map((item) => costLine(item, 1)),
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
