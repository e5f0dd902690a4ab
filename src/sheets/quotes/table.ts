import { rankQuotes } from '../../cost/rankQuotes.js';
import { declaredInput, inputCell, shownUnit, spilled, text, unitOf } from '../cells.js';
import { judgement, remarksAmong } from '../formula.js';
import { gap, type Line, type Mark, note, titles, units } from '../layout.js';
import { CALCULATED } from './calculated.js';
import { GIVEN } from './given.js';
import { OFFERS, type Offer, ROOM } from './offers.js';

const mark = (column: number): Mark => ({ column, rows: ROOM });
const place = (key: string): string => `quotes.${key}`;

const marks: Readonly<Record<string, Mark>> = Object.fromEntries([
  [place('names'), mark(0)],
  ...GIVEN.map(({ key }, index) => [place(key), mark(index + 1)]),
  ...CALCULATED.map(({ key }, index) => [place(key), mark(GIVEN.length + 1 + index)]),
]);

/** Every figure has its judgement so many rows below, under its own column. */
const DOWN = ROOM + 4;
const judged = [{ cells: { column: 1, rows: ROOM, columns: GIVEN.length }, by: { column: 1, down: DOWN } }];

const quoteLine = (row: number): Line => ({
  ...(row === 0 ? { marks, judged } : {}),
  cells: (at) => {
    const offer: Partial<Offer> = OFFERS[row] ?? {};
    const q = (key: string) => at(place(key));
    return [
      { text: offer.name ?? '', style: 'input', note: rankQuotes.inputs.names.help },
      ...GIVEN.map(({ key, feeds, digits }) => inputCell(declaredInput(...feeds), offer[key], digits)),
      ...CALCULATED.map(({ unit, key, formula }) => ({
        ...spilled(unit, key === 'rank' ? 0 : undefined),
        ...(row === 0 ? { formula: `=IF(${q('names')}="","",${formula(q, at)})` } : {}),
      })),
    ];
  },
});

const judgementLine = (row: number): Line => ({
  marks:
    row === 0
      ? Object.fromEntries(GIVEN.map(({ key }, index) => [`judged.${key}`, { column: index + 1, rows: ROOM }]))
      : {},
  cells: (at) => [
    { ...(row === 0 ? { formula: `=IF(${at(place('names'))}="","",${at(place('names'))})` } : {}), style: 'label' },
    ...GIVEN.map(({ key, feeds }) => ({
      ...(row === 0 ? { formula: judgement(at(place(key)), feeds[0], `${feeds[0].inputs[feeds[1]]?.label}`) } : {}),
      style: 'note' as const,
    })),
  ],
});

/** How many figures of each column are not usual. */
const remarksLine: Line = {
  cells: (at) => [
    text('Unusual or refused', 'label'),
    ...GIVEN.map(({ key }) => ({ formula: remarksAmong(at(`judged.${key}`)), style: 'note', format: '0' }) as const),
    text('counted in the judgements below', 'note'),
  ],
};

/** Right of name and kind. */
const FIGURES = [2, 1 + GIVEN.length + CALCULATED.length] as const;

export const quoteLines: readonly Line[] = [
  titles(['Quote', ...GIVEN.map(({ label }) => label), ...CALCULATED.map(({ label }) => label)], FIGURES),
  units(
    [
      '',
      ...GIVEN.map(({ feeds }) => shownUnit(unitOf(declaredInput(...feeds)))),
      ...CALCULATED.map(({ unit }) => unit),
    ],
    FIGURES,
  ),
  ...Array.from({ length: ROOM }, (_, row) => quoteLine(row)),
  remarksLine,
  gap,
  note('Judgement of each figure above by RANGECHECK. What is cut off here shows whole when its cell is selected.'),
  titles(['Quote', ...GIVEN.map(({ label }) => label)]),
  ...Array.from({ length: ROOM }, (_, row) => judgementLine(row)),
];
