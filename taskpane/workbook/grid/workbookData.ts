import type { StarterSheet } from '../../../src/sheets/sheet.js';
import {
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
  VerticalAlign,
} from '../engine/core.js';
import { pageOfStarter } from '../xlsx/starterPage.js';
import { cellData } from './cells.js';
import { withCharts } from './chartMarks.js';
import { withPrinted } from './printed.js';
import { withRule } from './validation.js';

/** Formulas cannot reach beyond these; they hold a year's daily runs many times over. */
export const ROWS = 5000;
export const COLUMNS = 52;

/** Width of one character of the grid's font, and the room on both sides, in pixels. */
const CHARACTER = 7.5;
const PADDING = 12;

/** The width of a column in characters, from pixels. */
export const charactersOf = (pixels: number | undefined): number | undefined =>
  pixels === undefined ? undefined : Math.round(((pixels - PADDING) / CHARACTER) * 100) / 100;

export function sheetData(starter: StarterSheet, id: string, name = starter.name): Partial<IWorksheetData> {
  const cells: IObjectMatrixPrimitiveType<ICellData> = {};
  starter.rows.forEach((row, r) => {
    cells[r] = Object.fromEntries(row.map((cell, c) => [c, withRule(cellData(cell), cell)]));
  });
  const sheet = {
    ...blankSheet(id, name),
    rowCount: Math.max(ROWS, starter.rows.length),
    cellData: cells,
    ...shapeData(starter),
  };
  const page = pageOfStarter(starter);
  return withPrinted(withCharts({ ...sheet, custom: { page } }, starter.charts ?? []), page);
}

/** The width of a column in pixels, from characters. */
export const pixelsOf = (characters: number): number => Math.round(characters * CHARACTER + PADDING);

/** A starter sheet as there is room for it: its labels stay in view only where its figures keep the larger part. */
export function fitted(starter: StarterSheet, room: number): StarterSheet {
  const labels = starter.widths.slice(0, starter.labelColumns ?? 0).map(pixelsOf);
  return 2 * labels.reduce((sum, one) => sum + one, 0) > room ? { ...starter, labelColumns: 0 } : starter;
}

/** The numbers of the rows, in pixels. */
const ROW_HEADER = 46;
/** Smaller letters can no longer be read. */
const SMALLEST = 0.65;

/** How large a starter sheet is drawn so that its labels and the figures beside them are seen together. */
export function zoomFor({ widths }: Pick<StarterSheet, 'widths'>, room: number): number {
  const [labels = 0, figures = 0] = widths.map(pixelsOf);
  const fits = Math.floor((room / (labels + figures + ROW_HEADER)) * 20) / 20;
  return Math.min(1, Math.max(SMALLEST, fits));
}

interface Shape {
  readonly widths: readonly (number | undefined)[];
  readonly headerRows: number;
  readonly labelColumns?: number;
}

/** The first row and column that move; -1 where none stays. */
const freeze = (rows: number, columns: number): Partial<IWorksheetData> =>
  rows + columns > 0
    ? { freeze: { xSplit: columns, ySplit: rows, startRow: rows || -1, startColumn: columns || -1 } }
    : {};

/** Widths of columns, and what stays in view. */
export function shapeData({ widths, headerRows, labelColumns = 0 }: Shape): Partial<IWorksheetData> {
  const columnData = Object.fromEntries(
    widths.flatMap((width, column) => (width === undefined ? [] : [[column, { w: pixelsOf(width) }]])),
  );
  return {
    columnData,
    ...freeze(headerRows, labelColumns),
  };
}

export function blankSheet(id: string, name: string): Partial<IWorksheetData> {
  return { id, name, rowCount: ROWS, columnCount: COLUMNS, defaultStyle: { vt: VerticalAlign.MIDDLE } };
}

/** A workbook of one sheet, as it stands before anything is saved. */
export function workbookData(sheet: Partial<IWorksheetData>): IWorkbookData {
  const id = sheet.id ?? 'first';
  return {
    id: 'workbook',
    name: 'Powderbook',
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: [id],
    sheets: { [id]: sheet },
  };
}
