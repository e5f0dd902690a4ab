import { starterSheets } from '../../src/sheets/index.js';
import type { StarterSheet } from '../../src/sheets/sheet.js';
import { LISTS, PASTED, placesOf } from '../../tests/sheets/rowChanges.js';
import { type Content, figuresOf, spoilings, toSpoil } from '../../tests/sheets/spoilings.js';
import { table } from './table.js';

const KINDS: Readonly<Record<string, (content: Content) => boolean>> = {
  'a figure made blank': (content) => content === '',
  'a figure made a text': (content) => typeof content === 'string' && content !== '',
  'a figure made negative': (content) => typeof content === 'number' && content < 0,
  'a figure a hundred times too large': (content) => typeof content === 'number' && content >= 0,
};

const rowsOf = ({ key }: StarterSheet): number | undefined => LISTS[key as keyof typeof LISTS];

/** A row taken out, a blank one put in its place, and the row put in again. */
const STEPS = ['a row of a list taken out', 'a blank row put in', 'a row put in'] as const;

const ofList = (count: (rows: number) => number) => (sheet: StarterSheet) => {
  const rows = rowsOf(sheet);
  return rows === undefined ? 0 : count(rows);
};

const ROWS: readonly (readonly [what: string, count: (sheet: StarterSheet) => number])[] = [
  ...Object.entries(KINDS).map(
    ([what, is]) =>
      [what, (sheet: StarterSheet) => figuresOf(toSpoil(sheet)).flatMap(spoilings).filter(is).length] as const,
  ),
  ...STEPS.map((what) => [what, ofList((rows) => placesOf(rows, true).length)] as const),
  [`${PASTED.join(', ')} rows pasted`, ofList(() => PASTED.length)],
  ['a row or a log doubled', ofList(() => 1)],
];

/** How many changes the answers of the starter sheets are held to, of each kind, as Markdown. */
export function sheetChanges(): string {
  const counts = ROWS.map(([what, count]) => [what, ...starterSheets.map(count)] as const);
  const sums = starterSheets.map((_, index) => counts.reduce((sum, row) => sum + Number(row[index + 1]), 0));
  const cells = [...counts, ['together', ...sums]].map((row) => row.map((cell) => (cell === 0 ? '' : String(cell))));
  return table(['change', ...starterSheets.map(({ name }) => name)], cells);
}
