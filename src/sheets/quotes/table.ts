import { rankQuotes } from '../../cost/rankQuotes.js';
import { declaredInput, inputCell, shownUnit, spilled, text, unitOf } from '../cells.js';
import { call, remarksIn } from '../formula.js';
import { type Line, type Mark, titles } from '../layout.js';
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

const quoteLine = (row: number): Line => ({
  ...(row === 0 ? { marks } : {}),
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

/** How many figures of each column are not usual. */
const remarksLine: Line = {
  marks: { 'quotes.remarks': { column: 1, columns: GIVEN.length } },
  cells: (at) => [
    text('Unusual or refused', 'label'),
    ...GIVEN.map(({ key, feeds: [calculation, input] }) => {
      const values = at(place(key));
      const judged = call('RANGECHECK', [`"${calculation.id}"`, `"${calculation.inputs[input]?.label}"`, values]);
      return { formula: remarksIn(`IF(${values}="","usual",${judged})`), style: 'note', format: '0' } as const;
    }),
    text('counted by RANGECHECK over each column', 'note'),
  ],
};

export const quoteLines: readonly Line[] = [
  titles(['Quote', ...GIVEN.map(({ label }) => label), ...CALCULATED.map(({ label }) => label)]),
  {
    cells: () =>
      [
        '',
        ...GIVEN.map(({ feeds }) => shownUnit(unitOf(declaredInput(...feeds)))),
        ...CALCULATED.map(({ unit }) => unit),
      ].map((unit) => text(unit, 'unit')),
  },
  ...Array.from({ length: ROOM }, (_, row) => quoteLine(row)),
  remarksLine,
];
