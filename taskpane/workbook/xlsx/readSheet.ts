import type { BookSheet } from './book.js';
import { LIMITS } from './limits.js';
import { type Package, related } from './parts.js';
import type { Printed } from './printed.js';
import { type Rows, rowsOf, type Shared } from './readCells.js';
import type { Colours } from './readColours.js';
import { chartsOf } from './readDrawing.js';
import { filterOf } from './readFilter.js';
import type { LeftOut, Reading } from './reading.js';
import { addNotes } from './readNotes.js';
import { pageOf } from './readPage.js';
import { addValidations, conditionsOf } from './readRules.js';
import type { ConditionColours } from './readStyles.js';
import { attribute, childOf, childrenOf, isTrue, whole, type XmlElement } from './readXml.js';
import { charactersInFile } from './width.js';

/** What a sheet may have and the grid does not take, by the element that tells of it. */
const NOT_TAKEN: Readonly<Record<string, LeftOut>> = {
  mergeCells: 'merged',
  hyperlinks: 'links',
  sheetProtection: 'protection',
  tableParts: 'tables',
};

const WIDEST = 255;
/** In points. */
const HIGHEST = 409.5;
const MOST_FROZEN = { rows: 200, columns: 20 };

/** Widths of columns, and those that are hidden, from 0. */
function columnsOf(sheet: XmlElement, { leftOut }: Reading) {
  const widths: (number | undefined)[] = [];
  const hidden = new Set<number>();
  for (const one of childrenOf(childOf(sheet, 'cols'), 'col')) {
    const hides = isTrue(attribute(one, 'hidden'));
    if (attribute(one, 'outlineLevel')) leftOut.add('outline');
    const [first, last] = [whole(attribute(one, 'min')) ?? 1, whole(attribute(one, 'max')) ?? 1];
    const end = Math.min(last, LIMITS.columns);
    if (hides && last > end) leftOut.add('hidden');
    if (hides) for (let column = Math.max(1, first); column <= end; column += 1) hidden.add(column - 1);
    // A hidden column without a width of its own is as wide as any other once it is shown.
    if (hides && !isTrue(attribute(one, 'customWidth'))) continue;
    const width = charactersInFile(Number(attribute(one, 'width') ?? Number.NaN));
    if (!(width > 0 && width <= WIDEST)) continue;
    for (let column = Math.max(1, first); column <= end; column += 1) widths[column - 1] = width;
  }
  const hiddenColumns = [...hidden].sort((one, other) => one - other);
  return { widths: Array.from(widths), ...(hiddenColumns.length > 0 ? { hiddenColumns } : {}) };
}

function frozenOf(sheet: XmlElement): Pick<BookSheet, 'headerRows' | 'labelColumns'> {
  const pane = childOf(sheet, 'sheetViews', 'sheetView', 'pane');
  const frozen = attribute(pane, 'state')?.startsWith('frozen');
  const split = (name: string, most: number) => (frozen ? Math.min(most, whole(attribute(pane, name)) ?? 0) : 0);
  return { headerRows: split('ySplit', MOST_FROZEN.rows), labelColumns: split('xSplit', MOST_FROZEN.columns) };
}

/** Heights that someone chose, as the others follow from what stands in the row; and the rows that are hidden, from 0. */
function linesOf(sheet: XmlElement, { leftOut }: Reading): Pick<BookSheet, 'heights'> & { hidden: number[] } {
  const heights: (number | undefined)[] = [];
  const hidden: number[] = [];
  let row = 0;
  // Where all rows are hidden that the file says nothing of.
  if (isTrue(attribute(childOf(sheet, 'sheetFormatPr'), 'zeroHeight'))) leftOut.add('hidden');
  for (const line of childrenOf(childOf(sheet, 'sheetData'), 'row')) {
    row = whole(attribute(line, 'r')) ?? row + 1;
    if (attribute(line, 'outlineLevel')) leftOut.add('outline');
    if (isTrue(attribute(line, 'hidden'))) {
      if (row <= LIMITS.rows) hidden.push(row - 1);
      else leftOut.add('hidden');
    }
    const height = Number(attribute(line, 'ht') ?? Number.NaN);
    if (isTrue(attribute(line, 'customHeight')) && height > 0 && height <= HIGHEST && row <= LIMITS.rows)
      heights[row - 1] = height;
  }
  return { hidden, ...(heights.length > 0 ? { heights: Array.from(heights) } : {}) };
}

/** How the sheet is shown: its tab, its size, its lines. */
function viewOf(sheet: XmlElement, colours: Colours): Pick<BookSheet, 'tab' | 'zoom' | 'plain'> {
  const view = childOf(sheet, 'sheetViews', 'sheetView');
  const tab = colours(childOf(sheet, 'sheetPr', 'tabColor'));
  const percent = whole(attribute(view, 'zoomScale')) ?? 100;
  return {
    ...(tab ? { tab } : {}),
    ...(percent !== 100 && percent >= 10 && percent <= 400 ? { zoom: percent / 100 } : {}),
    ...(isTrue(attribute(view, 'showGridLines') ?? '1') ? {} : { plain: true as const }),
  };
}

interface SheetPart {
  readonly all: Package;
  readonly part: string;
  readonly root: XmlElement;
  readonly name: string;
  readonly hidden: BookSheet['hidden'];
  /** What is printed of it, and repeated on each page. */
  readonly printed: Printed | undefined;
  readonly colours: Colours;
  readonly judged: readonly ConditionColours[];
}

export function sheetOf(
  { all, part, root, name, hidden, printed, colours, judged }: SheetPart,
  shared: Shared,
  names: Readonly<Record<string, string>>,
  reading: Reading,
): BookSheet {
  for (const { localName } of childrenOf(root)) {
    const missing = NOT_TAKEN[localName ?? ''];
    if (missing) reading.leftOut.add(missing);
  }
  const rows: Rows = rowsOf(childOf(root, 'sheetData'), shared, reading);
  addValidations(root, rows, reading);
  addNotes(related(all, all.relations(part), 'comments'), rows, reading);
  const fills = judged.map(({ fill }) => fill);
  const conditions = conditionsOf(root, fills, rows, reading);
  const { hidden: hiddenRows, heights } = linesOf(root, reading);
  const { filter, others } = filterOf(root, hiddenRows, judged, reading);
  const sheet: BookSheet = {
    name,
    rows: Array.from(rows),
    ...columnsOf(root, reading),
    names,
    ...frozenOf(root),
    ...(conditions.length > 0 ? { conditions } : {}),
    ...(hidden ? { hidden } : {}),
    ...(others.length > 0 ? { hiddenRows: others } : {}),
    ...(filter ? { filter } : {}),
    ...(heights ? { heights } : {}),
    ...viewOf(root, colours),
    page: pageOf(root, printed ?? {}, reading),
  };
  const charts = chartsOf(all, part, sheet, reading);
  return charts.length > 0 ? { ...sheet, charts } : sheet;
}
