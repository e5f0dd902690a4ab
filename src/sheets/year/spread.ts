import type { PlanLabel } from '../../core/input.js';
import { savingSensitivity } from '../../plan/savingSensitivity.js';
import { savingSpread } from '../../plan/savingSpread.js';
import { PLAN } from '../../plan/table.js';
import { ownInput, shownUnit, text } from '../cells.js';
import { chosenLine, ofChosen } from '../chosenRow.js';
import { columnsOf } from '../columns.js';
import { call } from '../formula.js';
import { type At, gap, heading, type Line, type Mark, note, picture, titles, UNIT } from '../layout.js';
import { placeOf, withoutHeader } from '../place.js';
import { type PlanKey, planFormat } from '../planLines.js';
import { SOURCE_TITLE, sourceCell } from '../provenance.js';
import { reportLines, tableLines } from '../reports.js';
import { STATED } from '../scenario.js';
import { verdictOf } from '../verdict.js';
import { beerList, ownColumn } from './beerList.js';
import { columns } from './lines.js';

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

const JUDGED = 3 + ENDS.length;
const SOURCE = JUDGED + 1;

const column = (index: number): Mark => ({ column: index, rows: STATED.length });

const whole: Readonly<Record<string, Mark>> = {
  'spread.labels': column(0),
  ...Object.fromEntries(ENDS.map(({ name }, index): [string, Mark] => [`spread.${name}`, column(index + 2)])),
};

const HELP = 'Share by which the figure may be off, up and down; 0 where you are sure of it.';
const LIMIT = [0, 0.9] as const;

/** A figure of the beer that is named, or one that all beers share. */
const figureOf = (at: At, key: PlanKey, side: number): string => {
  const own = ownColumn(key, side);
  return own ? ofChosen(beerList, at, 'chosenBeer', own) : at(`shared.${key}.${side}`);
};

const spreadLine = (key: PlanKey, row: number): Line => {
  const declared: PlanLabel = PLAN[key];
  const off = OFF[key] ?? 0;
  const asked = { label: `${declared.label} may be off by`, limit: LIMIT, unit: 'fraction', help: HELP } as const;
  return {
    marks: { [`off.${key}`]: { column: 1 }, ...(row === 0 ? whole : {}) },
    judged: [{ cells: { column: 1 }, by: { column: JUDGED } }],
    cells: (at) => {
      const place = at(`off.${key}`);
      const source = placeOf(Number(/\d+/.exec(place)?.[0]) - 1, { column: SOURCE });
      return [
        text(declared.label, 'label'),
        ownInput(declared.label, off, LIMIT, 'fraction', HELP),
        ...ENDS.map(({ side, sign }) => ({
          format: planFormat(declared),
          style: 'result' as const,
          formula: `=${figureOf(at, key, side)}*(1${sign}${place})`,
        })),
        text(shownUnit(declared.unit), 'unit'),
        {
          formula: verdictOf(
            place,
            { declared: { ...asked, source: HELP }, label: asked.label },
            off > 0 ? { figure: off, source } : undefined,
          ),
          style: 'note',
        },
        sourceCell,
      ];
    },
  };
};

const ends = (at: At): readonly string[] =>
  ['labels', ...ENDS.map(({ name }) => name)].map((name) => at(`spread.${name}`));

const figure = { ...columnsOf(['Figure']), about: columns.about };

/** What stands below the guesses: the saving with all in the middle. */
const ROOM_FOR_REST = 1;
/** Both plans may have a guess of their own. */
const GUESSES = 2 * Object.keys(OFF).length;

export const spreadLines: readonly Line[] = [
  heading('How sure is the saving? Of one beer'),
  note('Figures of several beers may be off together, so their spreads do not add up: this part is about one beer.'),
  chosenLine(columns, beerList, {
    name: 'chosenBeer',
    label: 'Beer',
    example: 'Beer 1',
    help: 'The name of a beer of the list at the end.',
    about: 'Your own choice.',
  }),
  titles(
    [
      'Quantity',
      'May be off by',
      'Now, low',
      'Now, high',
      'Proposed, low',
      'Proposed, high',
      UNIT,
      'Judged',
      SOURCE_TITLE,
    ],
    [1, 6],
  ),
  ...STATED.map(spreadLine),
  gap,
  ...reportLines(figure, 'saving', savingSpread, (at) => [call(savingSpread.id, ends(at))]),
  gap,
  heading('Which of the guesses moves that beer’s saving most?'),
  ...tableLines('sensitivity', savingSensitivity, GUESSES + ROOM_FOR_REST, (at) =>
    call(savingSensitivity.id, ends(at)),
  ),
  gap,
  ...picture('spread.picture'),
];

/** Guesses that are drawn: below them may stand the saving with all in the middle. */
const DRAWN = 6;

/** The widest guesses, without the header. */
export const guesses = (range: string): string =>
  withoutHeader(range).replace(
    /(\d+):([A-Z]+)\d+$/,
    (_, first, column) => `${first}:${column}${Number(first) + DRAWN - 1}`,
  );
