import { areaOf, placeAt } from './area.js';
import { text } from './cells.js';
import { conditionsOf, conditionsOfList, type Judged, type NamedInRow } from './judged.js';
import { type Mark, placeOf } from './place.js';
import type { SheetCell, SheetChart, StarterSheet } from './sheet.js';
import { type Answered, type Judgements, madeSound } from './soundness.js';

export type { Mark } from './place.js';

/** Gives the address of a named place, such as `B7` or `B7:B19`. */
export type At = (name: string) => string;

/** One row of a starter sheet before addresses are known. Formulas of other rows read its marks. */
export interface Line {
  /** A name with a point in it serves formulas only and is not defined in the workbook. */
  readonly marks?: Readonly<Record<string, Mark>>;
  /** What is coloured where it is unusual or refused. */
  readonly judged?: readonly Judged[];
  /** The cells of a list, from this row on. */
  readonly named?: NamedInRow;
  /** Answers that show only while all that they rest on is sound. */
  readonly answers?: readonly Answered[];
  cells(at: At): readonly SheetCell[];
}

export const line = (words: string, style: SheetCell['style']): Line => ({ cells: () => [text(words, style)] });
export const title = (words: string): Line => line(words, 'title');
export const heading = (words: string): Line => line(words, 'heading');
export const note = (words: string): Line => line(words, 'note');
export const caution = (words: string): Line => line(words, 'caution');
export const gap: Line = { cells: () => [] };

/** What a sheet comes to, before all that leads to it. */
export const answer = (lines: readonly Line[]): readonly Line[] => [heading('The answer'), ...lines, gap];

/** Answers that rest on whole lists, too. */
export const restingOn = (one: Line, also: readonly string[]): Line => ({
  ...one,
  answers: (one.answers ?? []).map((answer) => ({ ...answer, also })),
});

/** Room for a picture. */
export const picture = (name: string, rows = 14, columns = 4): readonly Line[] => [
  marked(gap, { [name]: { column: 1, columns, rows } }),
  ...Array.from({ length: rows }, () => gap),
];

/** A line with further places, such as where a picture begins. */
export const marked = (one: Line, marks: Readonly<Record<string, Mark>>): Line => ({
  ...one,
  marks: { ...one.marks, ...marks },
});

/** The same for the first of several lines. */
export const markedFirst = (lines: readonly Line[], marks: Readonly<Record<string, Mark>>): readonly Line[] =>
  lines.map((one, index) => (index === 0 ? marked(one, marks) : one));

/** Over a column of units. */
export const UNIT = 'Unit';

type Columns = readonly [from: number, to: number];

const overFigures = (words: readonly string[], style: SheetCell['style'], [from, to]: Columns): Line => ({
  cells: () =>
    words.map((one, column) => ({
      ...text(one, style),
      ...(column >= from && column < to ? { align: 'right' as const } : {}),
      ...(one === UNIT ? { align: 'indented' as const } : {}),
    })),
});

/** Titles of a wide table's columns; those over figures stand at the right. */
export const titles = (words: readonly string[], figures: Columns = [0, 0]): Line =>
  overFigures(words, 'heading', figures);

/** Units under such titles. */
export const units = (words: readonly string[], figures: Columns = [0, words.length]): Line =>
  overFigures(words, 'unit', figures);

const isDefined = (name: string): boolean => !name.includes('.');

/** A sheet but for its cells; its charts read places by their names, as formulas do. */
interface Plain extends Omit<StarterSheet, 'rows' | 'names' | 'conditions' | 'charts'> {
  charts?(at: At): readonly SheetChart[];
}

/** Lays lines out into a sheet: each mark gets its address, and a defined name. */
export function layOut({ charts, ...sheet }: Plain, lines: readonly Line[]): StarterSheet {
  const addresses = new Map<string, string>();
  for (const [row, { marks = {} }] of lines.entries()) {
    for (const [name, mark] of Object.entries(marks)) {
      if (addresses.has(name)) throw new Error(`Two places of ${sheet.name} are named ${name}.`);
      addresses.set(name, placeOf(row, mark));
    }
  }
  const judged = lines.flatMap(({ judged = [] }, row) => judged.map((one) => [row, one] as const));
  const judgements = judgementsOf(judged);
  addresses.set(JUDGEMENTS, spanOf([...judgements.values()]));
  const at: At = (name) => {
    const address = addresses.get(name);
    if (address === undefined) throw new Error(`No place of ${sheet.name} is named ${name}.`);
    return address;
  };
  const names = Object.fromEntries([...addresses].filter(([name]) => isDefined(name)));
  const rows = lines.map(({ cells }) => [...cells(at)]);
  const answers = lines.flatMap(({ answers = [] }, row) => answers.map((one) => [row, one] as const));
  madeSound(rows, answers, judgements, at);
  return {
    ...sheet,
    rows,
    names,
    conditions: [
      ...conditionsOf(judged),
      ...conditionsOf(
        answers.map(([row, { column, by, down = 0 }]) => [row, { cells: { column }, by: { column: by, down } }]),
        'answers',
      ),
      ...lines.flatMap(({ named }, row) => (named ? conditionsOfList(row, named) : [])),
    ],
    charts: charts?.(at) ?? [],
  };
}

/** All single judgements of a sheet, as one rectangle. */
export const JUDGEMENTS = 'all.judgements';

function judgementsOf(judged: readonly (readonly [row: number, one: Judged])[]): Judgements {
  const found = new Map<string, string>();
  for (const [row, { cells, by }] of judged)
    for (let down = 0; down < (cells.rows ?? 1); down++)
      for (let right = 0; right < (cells.columns ?? 1); right++)
        found.set(
          placeAt({ row: row + down, column: cells.column + right }),
          placeAt({ row: row + down + (by.down ?? 0), column: by.column + right }),
        );
  return found;
}

function spanOf(addresses: readonly string[]): string {
  const places = addresses.map(areaOf);
  const [rows, columns] = [places.map(({ row }) => row), places.map(({ column }) => column)];
  return `${placeAt({ row: Math.min(...rows), column: Math.min(...columns) })}:${placeAt({ row: Math.max(...rows), column: Math.max(...columns) })}`;
}
