import { notationOfBlock, withDecimal } from '../entry/blockMark.js';
import type { DateNotation } from '../entry/date.js';
import type { Notation } from '../entry/notation.js';
import type { NumberEntry } from '../entry/number.js';
import { isName, numberInText } from '../entry/textNumber.js';
import type { Writing } from '../entry/writing.js';
import type { Separator } from './rows.js';

export type Figure = Extract<NumberEntry, { kind: 'number' }>;
export type Kind = 'number' | 'date' | 'moment' | 'time' | 'text' | 'blank';

/** What someone chose in the place of what was understood. */
export interface ReadingChoices {
  readonly decimal?: Notation['decimal'];
  readonly order?: DateNotation['order'];
  readonly headerRows?: number;
  /** Columns, from 0, whose cells stay texts. */
  readonly asText?: readonly number[];
}

export interface Column {
  readonly title: string;
  readonly kind: Kind;
  /** Cells below the titles that stay text although the column is one of figures. */
  readonly texts: number;
}

export interface Table {
  readonly decimal: Notation['decimal'];
  readonly order: DateNotation['order'];
  /** Rows above the first one with figures. */
  readonly headerRows: number;
  readonly columns: readonly Column[];
  /** The figure in a cell, or nothing where it stays a text. */
  figure(row: number, column: number): Figure | undefined;
  /** A number, and a date, that could be read in two ways, where nothing in the file settles it. */
  readonly open?: string;
  readonly openDate?: string;
}

type Rows = readonly (readonly string[])[];

/** Titles and units stand in no more rows than this. */
const MOST_TITLES = 20;
const LONGEST_TITLE = 60;

const kindOf = ({ format }: Figure): Kind => {
  if (!format) return 'number';
  const [day, hour] = [format.includes('y'), format.includes('h')];
  return day ? (hour ? 'moment' : 'date') : hour ? 'time' : 'number';
};

/** Rows before the first with a figure in it: titles, units, and what a program says of its own. */
function headerRowsOf(rows: Rows, figure: (text: string) => Figure | undefined): number {
  const widest = rows.reduce((most, { length }) => Math.max(most, length), 0);
  const isData = (row: readonly string[]) =>
    row.length > widest / 2 &&
    row.some((cell) => figure(cell) !== undefined) &&
    row.filter(figure).length * 3 >= row.filter(Boolean).length;
  const first = rows.slice(0, MOST_TITLES + 1).findIndex(isData);
  return first === -1 ? Math.min(1, rows.length) : first;
}

function notationOf(rows: Rows, separator: Separator, language: Notation, { decimal, order }: ReadingChoices) {
  const settled = notationOfBlock(rows.flat(), language);
  // Between commas a comma is no decimal mark, as long as no cell in quotes shows one.
  const likely = separator === ',' && settled.open !== undefined ? '.' : settled.notation.decimal;
  const { dates } = settled.notation;
  const notation = withDecimal(settled.notation, decimal ?? likely);
  return { settled, notation: { ...notation, dates: { ...dates, order: order ?? dates.order } } };
}

/** What the rows of a text hold, as far as they show it, read as the choices have it. */
export function understand(rows: Rows, separator: Separator, language: Writing, choices: ReadingChoices): Table {
  const { settled, notation } = notationOf(rows, separator, language.notation, choices);
  const figure = (text: string) => numberInText(text, { ...language, notation });
  const headerRows = Math.min(choices.headerRows ?? headerRowsOf(rows, figure), rows.length);
  const width = rows.reduce((most, { length }) => Math.max(most, length), 0);
  const figures = rows.map((row, at) => (at < headerRows ? [] : row.map(figure)));
  const columns = Array.from({ length: width }, (_, column): Column => {
    const titles = rows.slice(0, headerRows).map((row) => row[column]?.trim() ?? '');
    const title = titles.filter(Boolean).slice(-2).join(' ').slice(0, LONGEST_TITLE);
    const texts = rows.slice(headerRows).map((row) => row[column]?.trim() ?? '');
    const filled = texts.filter(Boolean).length;
    const found = figures.flatMap((row) => row[column] ?? []);
    if (filled === 0) return { title, kind: 'blank', texts: 0 };
    // One batch number that would lose its noughts makes all of them texts.
    const named = texts.some(isName);
    if (named || choices.asText?.includes(column) || found.length * 2 < filled)
      return { title, kind: 'text', texts: 0 };
    const kinds = found.map(kindOf);
    const kind = kinds.includes('moment') ? 'moment' : (kinds[0] as Kind);
    return { title, kind, texts: filled - found.length };
  });
  const isOpen = settled.open !== undefined && separator !== ',' && choices.decimal === undefined;
  return {
    decimal: notation.decimal,
    order: notation.dates.order,
    headerRows,
    columns,
    figure: (row, column) => (columns[column]?.kind === 'text' ? undefined : figures[row]?.[column]),
    ...(isOpen ? { open: settled.open as string } : {}),
    ...(settled.openDate !== undefined && choices.order === undefined ? { openDate: settled.openDate } : {}),
  };
}
