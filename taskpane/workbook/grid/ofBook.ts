import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from '../engine/core.js';
import { type Book, type BookCell, type BookSheet, shownSheetOf } from '../xlsx/book.js';
import { isError } from '../xlsx/errors.js';
import { styleOfBook, UNFORMATTED } from './bookStyle.js';
import { textCell } from './cells.js';
import { withCharts } from './chartMarks.js';
import { FILTERS, savedFilters } from './filters.js';
import { withFixed } from './fixed.js';
import { withHidden } from './hiddenLines.js';
import { conditionRule, validationsOf } from './judging.js';
import { withKept } from './kept.js';
import { savedNames } from './names.js';
import { withNote } from './notes.js';
import { withPrinted } from './printed.js';
import { rowHeights } from './rowHeights.js';
import { withRule } from './validation.js';
import { blankSheet, COLUMNS, ROWS, shapeData } from './workbookData.js';

/** Each look once, under an id that cells name: a file gives thousands of cells the same few. */
class Styles {
  readonly all: Record<string, IStyleData> = {};
  readonly #ids = new Map<string, string>();

  id(cell: BookCell): string | undefined {
    if (!cell.look && !cell.format && !cell.align) return undefined;
    const style = styleOfBook(cell);
    const key = JSON.stringify(style);
    const id = this.#ids.get(key) ?? `look-${this.#ids.size}`;
    this.#ids.set(key, id);
    this.all[id] = style;
    return id;
  }
}

/** What a cell shows until its formula is calculated, or always where it has none. */
function valueData({ value, error, formula }: BookCell): ICellData {
  if (error !== undefined) return { v: error, t: CellValueType.STRING };
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (value === undefined || value === null) return {};
  if (formula !== undefined) return { v: value, t: CellValueType.STRING };
  // A text is one although the engine would take it for an error, or for nothing.
  return value === '' || isError(value) ? { v: value, t: CellValueType.FORCE_STRING } : textCell(value);
}

/** Without a format of its own, the engine would give a formula that of what it reads. */
const ownFormat = (cell: BookCell): BookCell =>
  cell.formula !== undefined && !cell.format ? { ...cell, format: UNFORMATTED } : cell;

function engineCell(cell: BookCell, styles: Styles): ICellData {
  const style = styles.id(ownFormat(cell));
  const data: ICellData = {
    ...valueData(cell),
    ...(cell.formula === undefined ? {} : { f: cell.formula }),
    ...(style ? { s: style } : {}),
  };
  return withNote(withFixed(withKept(withRule(data, cell), cell.kept), cell), cell.remark);
}

/** Heights, tab, size and lines, and the set-up of print, which travels with the sheet. */
const shownData = ({
  heights = [],
  hiddenRows,
  hidden,
  tab,
  zoom,
  plain,
  page,
}: BookSheet): Partial<IWorksheetData> => ({
  rowData: withHidden(rowHeights(heights), hiddenRows),
  hidden: hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
  ...(tab ? { tabColor: tab } : {}),
  ...(zoom ? { zoomRatio: zoom } : {}),
  ...(plain ? { showGridlines: BooleanNumber.FALSE } : {}),
  custom: { ...(page ? { page } : {}), ...(hidden ? { hidden } : {}) },
});

function sheetOf(sheet: BookSheet, id: string, styles: Styles): Partial<IWorksheetData> {
  const cells: IObjectMatrixPrimitiveType<ICellData> = {};
  let widest = 0;
  for (const [r, row] of sheet.rows.entries()) {
    if (!row) continue;
    widest = Math.max(widest, row.length);
    cells[r] = Object.fromEntries(row.flatMap((cell, c) => (cell ? [[c, engineCell(cell, styles)]] : [])));
  }
  const { hiddenRows = [], hiddenColumns = [] } = sheet;
  const shape = shapeData(sheet);
  const data = {
    ...blankSheet(id, sheet.name),
    rowCount: Math.max(ROWS, sheet.rows.length, sheet.heights?.length ?? 0, (hiddenRows.at(-1) ?? -1) + 1),
    columnCount: Math.max(COLUMNS, widest, sheet.widths.length, (hiddenColumns.at(-1) ?? -1) + 1),
    cellData: cells,
    ...shape,
    columnData: withHidden(shape.columnData ?? {}, hiddenColumns),
    ...shownData(sheet),
  };
  return withPrinted(withCharts(data, sheet.charts ?? []), sheet.page);
}

const idOf = (number: number): string => `sheet-${number}`;

/** The id of the sheet that a workbook shows first. */
export const shownFirst = (book: Book): string => idOf(shownSheetOf(book));

/** A workbook from a file as the engine opens it. */
export function gridOfBook(book: Book): IWorkbookData {
  const styles = new Styles();
  const ids = book.sheets.map((_, number) => idOf(number));
  const sheets = book.sheets.map((sheet, number) => sheetOf(sheet, ids[number] as string, styles));
  const bySheet = <T>(of: (sheet: BookSheet) => readonly T[]) =>
    JSON.stringify(Object.fromEntries(book.sheets.map((sheet, number) => [ids[number], of(sheet)])));
  return {
    id: 'workbook',
    name: 'Powderbook',
    appVersion: '',
    locale: LocaleType.EN_US,
    styles: styles.all,
    sheetOrder: ids,
    ...(book.keptNames ? { custom: { keptNames: book.keptNames } } : {}),
    sheets: Object.fromEntries(sheets.map((sheet, number) => [ids[number], sheet])),
    resources: [
      { name: 'SHEET_DEFINED_NAME_PLUGIN', data: JSON.stringify(savedNames(book, ids)) },
      { name: FILTERS, data: JSON.stringify(savedFilters(book, ids)) },
      { name: 'SHEET_DATA_VALIDATION_PLUGIN', data: bySheet(validationsOf) },
      {
        name: 'SHEET_CONDITIONAL_FORMATTING_PLUGIN',
        data: bySheet(({ conditions }) => (conditions ?? []).map(conditionRule)),
      },
    ],
  };
}
