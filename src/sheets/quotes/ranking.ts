import { rankQuotes } from '../../cost/rankQuotes.js';
import { type Block, ofCounted } from '../block.js';
import { spilled } from '../cells.js';
import { call } from '../formula.js';
import type { At } from '../layout.js';
import type { SheetCell } from '../sheet.js';

/** The cheapest that are drawn. */
export const DRAWN = 12;

const FIELDS = Object.entries(rankQuotes.output.fields);
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
  cells: (at) => [{ formula: `=${ranking(at)}`, style: 'unit' }],
  rows: FIELDS.map(
    ([key, field]): SheetCell =>
      'unit' in field ? spilled(field.unit, key === 'rank' ? 0 : undefined) : { format: 'General', style: 'result' },
  ),
  marks: (column) => ({
    ...Object.fromEntries(FIELDS.map(([key], index) => [`ranked.${key}`, { column: column + index, rows: DRAWN + 1 }])),
    ranked: { column, rows: room + 2, columns: FIELDS.length },
  }),
});
