import type { PlanLabel } from '../../core/input.js';
import { savingSpread } from '../../plan/savingSpread.js';
import { sensitivity } from '../../plan/sensitivity.js';
import { PLAN } from '../../plan/table.js';
import { ownInput, shownUnit, text } from '../cells.js';
import { columnsOf } from '../columns.js';
import { call } from '../formula.js';
import { type At, gap, heading, type Line, type Mark, note, titles, UNIT } from '../layout.js';
import { withoutHeader } from '../place.js';
import { type PlanKey, planFormat } from '../planLines.js';
import { reportLines, tableLines } from '../reports.js';
import { STATED } from '../scenario.js';
import { chosen } from './lines.js';

/** By how much each figure may be off, up and down. */
const OFF: Readonly<Partial<Record<PlanKey, number>>> = {
  viscosity: 0.05,
  stabiliserDose: 0.05,
  beerSolids: 0.2,
  aidPermeability: 0.1,
  beerSolidsPermeability: 0.2,
  stabiliserPermeability: 0.2,
  stabiliserPrice: 0.05,
  disposalPrice: 0.15,
  beerValue: 0.1,
  downtimeCost: 0.2,
};

/** As drawn in the sheet: both ends now, both ends proposed. */
const ENDS = [
  { name: 'nowLow', side: 0, sign: '-' },
  { name: 'nowHigh', side: 0, sign: '+' },
  { name: 'proposedLow', side: 1, sign: '-' },
  { name: 'proposedHigh', side: 1, sign: '+' },
] as const;

/** What stands below the guesses: the cost between all ends, and how many do nothing. */
const ROOM_FOR_REST = 2;

const column = (index: number): Mark => ({ column: index, rows: STATED.length });

/** Right of the first rows, whose note stands in one line. */
const PICTURE: Mark = { column: 8, columns: 8, rows: STATED.length };

const marks: Readonly<Record<string, Mark>> = {
  'spread.labels': column(0),
  'spread.off': column(1),
  'spread.picture': PICTURE,
  ...Object.fromEntries(ENDS.map(({ name }, index): [string, Mark] => [`spread.${name}`, column(index + 2)])),
};

const HELP = 'Share by which the figure may be off, up and down; 0 where you are sure of it.';

const spreadLine = (key: PlanKey, row: number): Line => {
  const declared: PlanLabel = PLAN[key];
  return {
    ...(row === 0 ? { marks } : {}),
    cells: (at) => [
      text(declared.label, 'label'),
      ownInput(declared.label, OFF[key] ?? 0, [0, 0.9], 'fraction', HELP),
      ...ENDS.map(({ side, sign }) => ({
        format: planFormat(declared),
        ...(row === 0 ? { formula: `=${chosen(at, side)}*(1${sign}${at('spread.off')})` } : {}),
      })),
      text(shownUnit(declared.unit), 'unit'),
    ],
  };
};

const figure = columnsOf(['Figure']);

const ends = (at: At, names: readonly string[]) => ['labels', ...names].map((name) => at(`spread.${name}`));

export const spreadLines: readonly Line[] = [
  heading('How sure is the saving?'),
  note(
    'Of the beer chosen above, not of all: figures of several beers may be off together, so their spreads do not add up. Shares are invented: your own judgement goes there.',
  ),
  titles(['Quantity', 'May be off by', 'Now, low', 'Now, high', 'Proposed, low', 'Proposed, high', UNIT], [1, 6]),
  ...STATED.map(spreadLine),
  gap,
  ...reportLines(figure, 'saving', savingSpread, (at) => [
    call(savingSpread.id, ends(at, ['nowLow', 'nowHigh', 'proposedLow', 'proposedHigh'])),
  ]),
  gap,
];

/** Guesses that are drawn: below them may stand the cost between all ends. */
const DRAWN = 6;

/** The widest guesses, without the header. */
export const guesses = (range: string): string =>
  withoutHeader(range).replace(
    /(\d+):([A-Z]+)\d+$/,
    (_, first, column) => `${first}:${column}${Number(first) + DRAWN - 1}`,
  );

/** Last on the sheet: how many rows it takes depends on how many figures may be off. */
export const sensitivityLines: readonly Line[] = [
  heading('Which of the guesses matters most? Cost per hL of the proposed plan'),
  ...tableLines('sensitivity', sensitivity, Object.keys(OFF).length + ROOM_FOR_REST, (at) =>
    call(sensitivity.id, ends(at, ['proposedLow', 'proposedHigh'])),
  ),
];
