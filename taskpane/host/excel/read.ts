import type { CellContent, Cells } from '../host.js';
import type { RangeReference, Reference } from '../reference.js';

interface Extent {
  readonly rows: number;
  readonly columns: number;
}

const blankAsNull = (value: unknown): CellContent => (value === '' ? null : (value as CellContent));

/** Something that the workbook may not have; whether it has can be asked after the next synchronisation. */
function perhaps<T extends { load(names: string[]): unknown }>(one: T, ...names: string[]): T {
  one.load(['isNullObject', ...names]);
  return one;
}

/** Asks for sheets, tables and names of the workbook. */
function places({ workbook }: Excel.RequestContext, references: readonly Reference[]) {
  const sheets = new Map<string, Excel.Worksheet>();
  const sheetOf = (name: string): Excel.Worksheet => {
    const sheet = sheets.get(name) ?? perhaps(workbook.worksheets.getItemOrNullObject(name));
    sheets.set(name, sheet);
    return sheet;
  };
  return references.map((reference) => {
    if (reference.kind === 'table') return { table: perhaps(workbook.tables.getItemOrNullObject(reference.table)) };
    const sheet = sheetOf(reference.sheet);
    if (reference.kind !== 'name') return { sheet };
    return { sheet, name: perhaps(workbook.names.getItemOrNullObject(reference.name)) };
  });
}

type Place = ReturnType<typeof places>[number];

interface Detail {
  readonly column?: Excel.TableColumn;
  readonly own?: Excel.NamedItem;
  readonly spill?: Excel.Range;
  readonly used?: Excel.Range;
}

/** The second question, once it is known which sheets and tables there are. */
function detail({ sheet, table }: Place, reference: Reference): Detail {
  if (reference.kind === 'table') {
    if (!table || table.isNullObject || reference.column === undefined) return {};
    return { column: perhaps(table.columns.getItemOrNullObject(reference.column)) };
  }
  if (!sheet || sheet.isNullObject) return {};
  if (reference.kind === 'name') return { own: perhaps(sheet.names.getItemOrNullObject(reference.name)) };
  if (reference.kind === 'spill') {
    const start = sheet.getRangeByIndexes(reference.row, reference.column, 1, 1);
    return { spill: perhaps(start.getSpillingToRangeOrNullObject()) };
  }
  if (reference.bottom !== null && reference.right !== null) return {};
  const ends = ['rowIndex', 'rowCount', 'columnIndex', 'columnCount'];
  return { used: perhaps(sheet.getUsedRangeOrNullObject(true), ...ends) };
}

function extentOf(used: Excel.Range | undefined): Extent {
  if (!used || used.isNullObject) return { rows: 0, columns: 0 };
  return { rows: used.rowIndex + used.rowCount, columns: used.columnIndex + used.columnCount };
}

function rangeOf(sheet: Excel.Worksheet, { top, left, bottom, right }: RangeReference, used: Extent): Excel.Range {
  const rows = (bottom ?? Math.max(top, used.rows - 1)) - top + 1;
  const columns = (right ?? Math.max(left, used.columns - 1)) - left + 1;
  return sheet.getRangeByIndexes(top, left, rows, columns);
}

const unlessNull = <T extends { readonly isNullObject: boolean }>(one: T | undefined): T | undefined =>
  one?.isNullObject ? undefined : one;

/** The range behind a reference, where the workbook has it. */
function found({ sheet, table, name }: Place, { column, own, spill, used }: Detail, reference: Reference) {
  if (reference.kind === 'table') return (column ? unlessNull(column) : unlessNull(table))?.getDataBodyRange();
  if (!sheet || sheet.isNullObject) return undefined;
  if (reference.kind === 'range') return rangeOf(sheet, reference, extentOf(used));
  if (reference.kind === 'spill') return unlessNull(spill);
  // A name may stand for a constant or a formula: then it has no cells.
  return (unlessNull(own) ?? unlessNull(name))?.getRangeOrNullObject();
}

/** The ranges behind any number of places, found with two requests; whether the last kinds exist, the next one tells. */
export async function rangesOf(context: Excel.RequestContext, references: readonly Reference[]) {
  const asked = places(context, references);
  await context.sync();
  const details = asked.map((place, index) => detail(place, references[index] as Reference));
  await context.sync();
  return asked.map((place, index) => found(place, details[index] ?? {}, references[index] as Reference));
}

/** Reads any number of places in three requests. */
export const read = (references: readonly Reference[]): Promise<readonly (Cells | undefined)[]> =>
  Excel.run(async (context) => {
    const ranges = (await rangesOf(context, references)).map((range) => range && perhaps(range, 'values'));
    await context.sync();
    return ranges.map((range) => unlessNull(range)?.values.map((row) => row.map(blankAsNull)));
  });
