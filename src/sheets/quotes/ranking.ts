import { rankQuotes } from '../../cost/rankQuotes.js';
import { ofCounted } from '../block.js';
import { spilled } from '../cells.js';
import { call, columnOf } from '../formula.js';
import type { At } from '../layout.js';
import type { Block } from '../list.js';
import type { SheetCell } from '../sheet.js';

/** The cheapest that are drawn. */
export const DRAWN = 12;

const { name, cost } = rankQuotes.output.fields;
const SHOWN = { name, cost } as const;
const FIELDS = Object.entries(SHOWN);
const columnOfField = (key: string): number => Object.keys(rankQuotes.output.fields).indexOf(key) + 1;
const READ = ['name', 'landed', 'moisture', 'dryDose'] as const;

/** Offers that cannot be ranked are blank to the ranking. */
const ranking = (at: At): string => {
  const q = (key: string) => at(`quotes.${key}`);
  return call(
    rankQuotes.id,
    READ.map((key) => ofCounted({ name: 'quotes' }, at, q(key))),
  );
};

/** The same offers once more, cheapest first, right of the list. */
export const ranked = (room: number): NonNullable<Block['beside']> => ({
  cells: (at) => FIELDS.map(([key]) => ({ formula: `=${columnOf(ranking(at), columnOfField(key))}`, style: 'unit' })),
  rows: FIELDS.map(
    ([, field]): SheetCell => ('unit' in field ? spilled(field.unit) : { format: 'General', style: 'result' }),
  ),
  marks: (column) => ({
    ...Object.fromEntries(FIELDS.map(([key], index) => [`ranked.${key}`, { column: column + index, rows: DRAWN + 1 }])),
    ranked: { column, rows: room + 2, columns: FIELDS.length },
  }),
});
