import { areaOf } from './area.js';
import { EXPLANATIONS } from './columns.js';
import { leastScale, pixelsAcross, roomAcross, roomDown, scaleFor, type Turned, turnedFor } from './paper.js';
import { isSeen, type Part, partsOf } from './parts.js';
import { columnLetters, placeOf } from './place.js';
import type { StarterSheet } from './sheet.js';

/** The pages on which a sheet is printed, legible and alike on A4 and on Letter. */
export interface SheetPages {
  readonly turned: Turned;
  /** In percent. */
  readonly scale: number;
  /** What is printed; each place begins a page of its own. */
  readonly areas: readonly string[];
  /** What each page repeats, such as `1:4` and `A:A`. */
  readonly rows?: string;
  readonly columns: string;
  /** The rows above which, and the columns to the left of which, a page begins, from 0. */
  readonly rowBreaks: readonly number[];
  readonly columnBreaks: readonly number[];
}

/** Heights of rows in points: the title of a sheet has larger letters. */
const [ROW, TITLE_ROW] = [15, 18.75];
/** A letter of running text takes about this share of the pixels of a figure’s. */
const LETTER = 6.1;
/** The share of the explanations that must have room, lest they are left out. */
const MOST = 0.8;

const widthOf = ({ widths }: StarterSheet, from: number, to: number): number =>
  widths.slice(from, to).reduce((sum, one) => sum + pixelsAcross(one), 0);

const heightOf = ({ rows }: StarterSheet, { from, rows: many }: Part): number =>
  rows
    .slice(from, from + many)
    .reduce((sum, row) => sum + (row.some(({ style }) => style === 'title') ? TITLE_ROW : ROW), 0);

/** How many columns hold anything in some rows. */
const usedOf = (rows: StarterSheet['rows']): number => Math.max(...rows.map((row) => row.findLastIndex(isSeen) + 1));

/** A list is higher than any page: it has pages of its own, and only it may go on from one to the next. */
function listOf(sheet: StarterSheet, parts: readonly Part[], turned: Turned): number | undefined {
  const room = roomDown(turned, leastScale()) - headerOf(sheet);
  return parts.find((part) => heightOf(sheet, part) > room)?.from;
}

const headerOf = (sheet: StarterSheet): number => heightOf(sheet, { from: 0, rows: sheet.headerRows });

/** How many columns are printed of the rows above a list. */
function columnsAbove(sheet: StarterSheet, end: number, room: number): number {
  const { rows, widths, charts = [] } = sheet;
  const above = rows.slice(0, end);
  const fitting = widths.findIndex((_, column) => widthOf(sheet, 0, column + 1) > room);
  const fits = fitting < 0 ? widths.length : fitting;
  const told = Math.max(...above.map((row) => row.findIndex(({ text }) => text === EXPLANATIONS)));
  const drawn = Math.max(
    0,
    ...charts.map(({ place }) => areaOf(place)).map(({ row, column, columns }) => (row < end ? column + columns : 0)),
  );
  const texts = above.slice(sheet.headerRows).flatMap((row) => row[told]?.text || []);
  const enough = texts.filter((text) => LETTER * text.length <= widthOf(sheet, told, fits)).length;
  if (told < 0) return Math.max(drawn, usedOf(above));
  return Math.max(drawn, enough >= MOST * texts.length ? fits : told);
}

/** The columns that name what stands in a row: up to the first that someone fills in, where a list has such. */
function labelsOf({ rows }: StarterSheet, list: number | undefined): number {
  const first =
    list === undefined ? undefined : rows.slice(list).find((row) => row.some(({ style }) => style === 'input'));
  return Math.max(0, first?.findIndex(({ style }) => style === 'input') ?? 0) + 1;
}

/** The columns with which pages begin, so that each holds as many as it can and tears no chart. */
function columnBreaksOf(
  sheet: StarterSheet,
  { first, labels, last }: Record<'first' | 'labels' | 'last', number>,
  room: number,
) {
  const charts = (sheet.charts ?? []).map(({ place }) => areaOf(place));
  const breaks: number[] = [];
  const repeated = widthOf(sheet, 0, labels);
  for (let from = 0, to = 1; to < last; to += 1) {
    const width = (from === 0 ? 0 : repeated) + widthOf(sheet, from, to + 1);
    if (to !== first && width <= room) continue;
    const torn = charts.filter(({ column, columns }) => column < to && to < column + columns);
    from = Math.max(from + 1, Math.min(to, ...torn.map(({ column }) => column)));
    to = from;
    breaks.push(from);
  }
  return breaks;
}

/** The rows with which pages begin, so that none of the parts is torn. */
function rowBreaksOf(sheet: StarterSheet, parts: readonly Part[], room: number): number[] {
  const breaks: number[] = [];
  const header = headerOf(sheet);
  let used = 0;
  for (const part of parts) {
    const height = heightOf(sheet, part);
    if (part.from > 0 && used + height > room) {
      breaks.push(part.from);
      used = header;
    }
    used += height;
  }
  return breaks;
}

/** How many rows there are down to the last in which anything is written: the room below is not printed. */
const writtenOf = (rows: StarterSheet['rows']): number =>
  rows.findLastIndex((row) => row.some(({ text, number, formula }) => text || number !== undefined || formula)) + 1;

/** How a starter sheet is printed: nothing below 8 points, and no part torn but a list. */
export function pagesOf(sheet: StarterSheet): SheetPages {
  const { rows, widths, headerRows, print } = sheet;
  const turned = print ?? turnedFor(widthOf(sheet, 0, widths.length));
  const parts = partsOf(sheet);
  const list = listOf(sheet, parts, turned);
  const end = list ?? rows.length;
  const room = roomAcross(turned, leastScale());
  const above = columnsAbove(sheet, end, room);
  const last = list === undefined ? above : Math.max(above, usedOf(rows.slice(list)));
  const labels = labelsOf(sheet, list);
  const columnBreaks = columnBreaksOf(sheet, { first: above, labels, last }, room);
  const across = [0, ...columnBreaks].map(
    (from, page) => widthOf(sheet, from, columnBreaks[page] ?? last) + (from === 0 ? 0 : widthOf(sheet, 0, labels)),
  );
  const whole = parts.filter(({ from }) => from < end);
  const highest = Math.max(...whole.map((part) => heightOf(sheet, part) + (part.from === 0 ? 0 : headerOf(sheet))));
  const fitsDown = Math.floor((100 * roomDown(turned, 100)) / highest);
  const scale = Math.max(leastScale(), Math.min(scaleFor(Math.max(...across), turned), fitsDown));
  const area = (from: number, to: number, columns: number) => placeOf(from, { column: 0, rows: to - from, columns });
  return {
    turned,
    scale,
    areas: [area(0, end, above), ...(list === undefined ? [] : [area(list, writtenOf(rows), last)])],
    ...(headerRows > 0 ? { rows: `1:${headerRows}` } : {}),
    columns: `A:${columnLetters(labels - 1)}`,
    rowBreaks: rowBreaksOf(sheet, whole, roomDown(turned, scale)),
    columnBreaks,
  };
}
