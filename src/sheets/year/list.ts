import { breakEven } from '../../plan/breakEven.js';
import { runLength } from '../../plan/runLength.js';
import { PLAN } from '../../plan/table.js';
import { formatOf, INVENTED, inputCell, ownInput, shownUnit, text } from '../cells.js';
import { call } from '../formula.js';
import { type At, gap, heading, type Line, type Mark, note, titles } from '../layout.js';
import { BEERS, type Beer } from './beers.js';
import { beerName, ofBeer, planOf } from './lines.js';
import { GIVEN, labelOf, ownValue, SAID } from './own.js';

interface Found {
  readonly label: string;
  readonly unit: 'hL' | 'money/hL' | 'money';
  readonly digits?: number;
  formula(at: At): string;
}

const perHl = (at: At, side: number) => `=TRANSPOSE(${at(`cost.Total.${side}`)})/${at('beerVolumes')}`;

/** What follows for each beer, one column a formula. */
const FOUND: readonly Found[] = [
  { label: 'Cost now', unit: 'money/hL', formula: (at) => perHl(at, 0) },
  { label: 'Cost proposed', unit: 'money/hL', formula: (at) => perHl(at, 1) },
  {
    label: 'Saved per year',
    unit: 'money',
    digits: 0,
    formula: (at) => `=TRANSPOSE(${at('saved.Total')})`,
  },
];

const marks = (beer: number): Record<string, Mark> => ({
  ...Object.fromEntries(
    GIVEN.map(({ key, side }, index): [string, Mark] => [
      `beers.${key}.${side ?? 'both'}.${beer}`,
      { column: index + 1 },
    ]),
  ),
  ...(beer === 0 ? { beerVolumes: { column: 1, rows: BEERS.length } } : {}),
});

const listLine = (beer: Beer, row: number): Line => ({
  marks: marks(row),
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
    text(INVENTED, 'note'),
  ],
});

const columnUnits = [
  ...GIVEN.map(({ key }) => shownUnit(PLAN[key].unit)),
  ...SAID.map(() => runLength.output.unit),
  ...FOUND.map(({ unit }) => unit),
  breakEven.output.unit,
];

export const beerLines: readonly Line[] = [
  heading('The beers'),
  note('What differs from beer to beer stands here; what they share stands in the plan below.'),
  titles([
    'Beer',
    ...GIVEN.map(labelOf),
    ...SAID.map((side) => `Run ${side}`),
    ...FOUND.map(({ label }) => label),
    'Break-even price',
    'Where the figures come from',
  ]),
  { cells: () => ['', ...columnUnits].map((unit) => text(unit, 'unit')) },
  ...BEERS.map(listLine),
  gap,
  {
    marks: { chosenBeer: { column: 1 } },
    cells: () => [
      text('Beer to judge and to spread below', 'label'),
      ownInput('Beer', 1, [1, BEERS.length], '', 'The number of the beer in the list above.'),
      text('', 'unit'),
      text('', 'note'),
      text('', 'note'),
      text('', 'note'),
      text('Your own choice.', 'note'),
    ],
  },
  gap,
];
