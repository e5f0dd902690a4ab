import { breakEven } from '../../plan/breakEven.js';
import { filtrationCost } from '../../plan/filtrationCost.js';
import { runLength } from '../../plan/runLength.js';
import { PLAN } from '../../plan/table.js';
import { formatOf, INVENTED, inputCell, ownInput, shownUnit, text } from '../cells.js';
import { call, judgement } from '../formula.js';
import { type At, gap, heading, type Line, type Mark, note, titles, units } from '../layout.js';
import { BEERS, type Beer } from './beers.js';
import { beerName, ofBeer, planOf, SOURCE, withoutBeers } from './lines.js';
import { GIVEN, ownValue, SAID } from './own.js';

interface Found {
  readonly label: string;
  readonly side?: string;
  readonly unit: 'hL' | 'money/hL' | 'money';
  readonly digits?: number;
  formula(at: At): string;
}

const perHl = (at: At, side: number) => `=TRANSPOSE(${at(`cost.Total.${side}`)})/${at('beerVolumes')}`;

/** What follows for each beer, one column a formula. */
const FOUND: readonly Found[] = [
  { label: 'Cost', side: SAID[0], unit: 'money/hL', formula: (at) => perHl(at, 0) },
  { label: 'Cost', side: SAID[1], unit: 'money/hL', formula: (at) => perHl(at, 1) },
  {
    label: 'Saved per year',
    unit: 'money',
    digits: 0,
    formula: (at) => `=TRANSPOSE(${at('saved.Total')})`,
  },
];

const COST = GIVEN.length + SAID.length + 1;
const column = (index: number): Mark => ({ column: index, rows: BEERS.length });

const whole: Readonly<Record<string, Mark>> = {
  beerVolumes: column(1),
  'beers.names': column(0),
  ...Object.fromEntries(GIVEN.map((_, index) => [`beers.given.${index}`, column(index + 1)])),
  ...Object.fromEntries(SAID.map((side, index) => [`beers.cost.${side}`, column(COST + index)])),
};

const marks = (beer: number): Record<string, Mark> => ({
  ...Object.fromEntries(
    GIVEN.map(({ key, side }, index): [string, Mark] => [
      `beers.${key}.${side ?? 'both'}.${beer}`,
      { column: index + 1 },
    ]),
  ),
  ...(beer === 0 ? whole : {}),
});

/** Every figure has its judgement so many rows below, under its own column. */
const DOWN = BEERS.length + 4;
const judged = [{ cells: { column: 1, rows: BEERS.length, columns: GIVEN.length }, by: { column: 1, down: DOWN } }];

const listLine = (beer: Beer, row: number): Line => ({
  marks: marks(row),
  ...(row === 0 ? { judged } : {}),
  cells: (at) => [
    text(beerName(row), 'label'),
    ...GIVEN.map((given) => inputCell(PLAN[given.key], ownValue(beer, given))),
    ...SAID.map((_, side) => ({ formula: `=${ofBeer(runLength.id, at, side, row)}`, format: formatOf('hL') })),
    ...FOUND.map(({ unit, digits, formula }) => ({
      format: formatOf(unit, digits),
      ...(row === 0 ? { formula: formula(at) } : {}),
    })),
    {
      formula: `=${call(breakEven.id, [at('year.labels'), planOf(at, 0, row), planOf(at, 1, row)])}`,
      format: formatOf(breakEven.output.unit),
    },
    ...PAD,
    text(INVENTED, 'note'),
  ],
});

const judgementLine = (_: Beer, row: number): Line => ({
  cells: (at) => [
    text(beerName(row), 'label'),
    ...GIVEN.map(({ key }, index) => ({
      ...(row === 0 ? { formula: judgement(at(`beers.given.${index}`), filtrationCost, PLAN[key].label) } : {}),
      style: 'note' as const,
    })),
  ],
});

const columns: readonly { readonly label: string; readonly side?: string | undefined; readonly unit: string }[] = [
  { label: 'Beer', unit: '' },
  ...GIVEN.map(({ key, side }) => ({
    label: PLAN[key].label,
    side: side === undefined ? '' : SAID[side],
    unit: shownUnit(PLAN[key].unit),
  })),
  ...SAID.map((side) => ({ label: 'Run', side, unit: runLength.output.unit })),
  ...FOUND,
  { label: 'Break-even price', unit: breakEven.output.unit },
];

/** What is judged, and before it the beer. */
const given = columns.slice(0, GIVEN.length + 1);
const FIGURES = [1, columns.length] as const;
const EMPTY = text('', 'note');
/** Up to the column that says where figures come from. */
const PAD = Array.from({ length: SOURCE - columns.length }, () => EMPTY);

export const beerLines: readonly Line[] = [
  heading('The beers'),
  note('What differs from beer to beer stands here; what they share stands in the plans below.'),
  units(columns.map(({ side }) => side ?? '')),
  titles([...columns.map(({ label }) => label), ...PAD.map(() => ''), 'Where the figures come from'], FIGURES),
  units(columns.map(({ unit }) => unit)),
  ...BEERS.map(listLine),
  gap,
  note('Judgement of each figure above by RANGECHECK. What is cut off here shows whole when its cell is selected.'),
  units(
    given.map(({ side }) => side ?? ''),
    [0, 0],
  ),
  titles(given.map(({ label }) => label)),
  ...BEERS.map(judgementLine),
  gap,
  withoutBeers({
    marks: { chosenBeer: { column: 1 } },
    cells: () => [
      text('Beer to judge and to spread below', 'label'),
      ownInput('Beer', 1, [1, BEERS.length], '', 'The number of the beer in the list above.'),
      ...Array.from({ length: 4 }, () => EMPTY),
      text('Your own choice.', 'note'),
    ],
  }),
  gap,
];
