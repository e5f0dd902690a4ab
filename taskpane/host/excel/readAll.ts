import type { CellContent } from '../host.js';
import type { DefinedName, ReadingOptions, SheetContents, WorkbookContents } from '../workbookContents.js';

/** Excel in a browser answers a request with five megabytes at most; this stays below with long formulas too. */
const CELLS_AT_ONCE = 20_000;

export interface Used {
  readonly name: string;
  readonly sheet: Excel.Worksheet;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** Where each sheet holds anything, found with one request for all of them. */
export async function usedRanges(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
): Promise<readonly Used[]> {
  const ranges = sheets.map((sheet) => sheet.getUsedRangeOrNullObject(true));
  for (const range of ranges) range.load(['rowIndex', 'columnIndex', 'rowCount', 'columnCount', 'isNullObject']);
  await context.sync();
  return ranges.map((range, index) => {
    const sheet = sheets[index] as Excel.Worksheet;
    if (range.isNullObject) return { name: sheet.name, sheet, row: 0, column: 0, rows: 0, columns: 0 };
    const { rowIndex, columnIndex, rowCount, columnCount } = range;
    return { name: sheet.name, sheet, row: rowIndex, column: columnIndex, rows: rowCount, columns: columnCount };
  });
}

const asContent = (value: unknown): CellContent => (value === '' ? null : (value as CellContent));

/** The rows of one sheet in as few requests as their size allows; `read` is told the cells of each. */
export async function readRows(
  context: Excel.RequestContext,
  { name, sheet, row, column, rows, columns }: Used,
  read: (cells: number) => void,
): Promise<SheetContents> {
  const formulas: CellContent[][] = [];
  const values: CellContent[][] = [];
  const step = Math.max(1, Math.floor(CELLS_AT_ONCE / Math.max(1, columns)));
  for (let first = 0; first < rows; first += step) {
    const count = Math.min(step, rows - first);
    const range = sheet.getRangeByIndexes(row + first, column, count, columns);
    range.load(['formulas', 'values']);
    await context.sync();
    for (const line of range.formulas) formulas.push(line.map(asContent));
    for (const line of range.values) values.push(line.map(asContent));
    read(count * columns);
  }
  return { name, row, column, formulas, values };
}

const namesOf = (items: readonly Excel.NamedItem[], sheet?: string): DefinedName[] =>
  items.map(({ name, formula }) => ({ name, formula: String(formula), ...(sheet === undefined ? {} : { sheet }) }));

/** Every sheet of the workbook with its names: three requests, and one for each further 20,000 cells. */
export const readAll = ({ onProgress, signal }: ReadingOptions): Promise<WorkbookContents> =>
  Excel.run(async (context) => {
    const { workbook } = context;
    const active = workbook.worksheets.getActiveWorksheet();
    active.load('name');
    workbook.worksheets.load('items/name');
    workbook.names.load(['items/name', 'items/formula']);
    await context.sync();
    const sheets = workbook.worksheets.items;
    for (const { names } of sheets) names.load(['items/name', 'items/formula']);
    const used = await usedRanges(context, sheets);
    const all = used.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
    let done = 0;
    const contents: SheetContents[] = [];
    for (const one of used) {
      const rows = await readRows(context, one, (cells) => {
        signal?.throwIfAborted();
        done += cells;
        onProgress?.(done / all);
      });
      contents.push(rows);
    }
    const names = sheets.flatMap((sheet) => namesOf(sheet.names.items, sheet.name));
    return { active: active.name, sheets: contents, names: [...namesOf(workbook.names.items), ...names] };
  });
