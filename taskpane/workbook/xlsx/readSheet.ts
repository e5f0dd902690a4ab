import type { BookSheet } from './book.js';
import { LIMITS } from './limits.js';
import { type Package, related } from './parts.js';
import { type Rows, rowsOf, type Shared } from './readCells.js';
import type { LeftOut, Reading } from './reading.js';
import { addNotes } from './readNotes.js';
import { addValidations, conditionsOf } from './readRules.js';
import { attribute, childOf, childrenOf, isTrue, whole, type XmlElement } from './readXml.js';

/** What a sheet may have and the grid does not take, by the element that tells of it. */
const NOT_TAKEN: Readonly<Record<string, LeftOut>> = {
  mergeCells: 'merged',
  autoFilter: 'filters',
  hyperlinks: 'links',
  sheetProtection: 'protection',
  tableParts: 'tables',
};

const WIDEST = 255;
/** The room on both sides that a file counts into a width, in characters. */
const ROOM = 0.71;
const MOST_FROZEN = { rows: 200, columns: 20 };

function widthsOf(sheet: XmlElement, { leftOut }: Reading): (number | undefined)[] {
  const widths: (number | undefined)[] = [];
  for (const one of childrenOf(childOf(sheet, 'cols'), 'col')) {
    if (isTrue(attribute(one, 'hidden'))) leftOut.add('hidden');
    const [first, last] = [whole(attribute(one, 'min')) ?? 1, whole(attribute(one, 'max')) ?? 1];
    const width = Number(attribute(one, 'width') ?? Number.NaN) - ROOM;
    if (!(width > 0 && width <= WIDEST)) continue;
    for (let column = Math.max(1, first); column <= Math.min(last, LIMITS.columns); column += 1)
      widths[column - 1] = Math.round(width * 100) / 100;
  }
  return Array.from(widths);
}

function frozenOf(sheet: XmlElement): Pick<BookSheet, 'headerRows' | 'labelColumns'> {
  const pane = childOf(sheet, 'sheetViews', 'sheetView', 'pane');
  const frozen = attribute(pane, 'state')?.startsWith('frozen');
  const split = (name: string, most: number) => (frozen ? Math.min(most, whole(attribute(pane, name)) ?? 0) : 0);
  return { headerRows: split('ySplit', MOST_FROZEN.rows), labelColumns: split('xSplit', MOST_FROZEN.columns) };
}

function printOf(sheet: XmlElement): Pick<BookSheet, 'print'> {
  const turned = attribute(childOf(sheet, 'pageSetup'), 'orientation');
  return turned === 'portrait' || turned === 'landscape' ? { print: turned } : {};
}

interface SheetPart {
  readonly all: Package;
  readonly part: string;
  readonly root: XmlElement;
  readonly name: string;
}

export function sheetOf(
  { all, part, root, name }: SheetPart,
  shared: Shared,
  fills: readonly (string | undefined)[],
  names: Readonly<Record<string, string>>,
  reading: Reading,
): BookSheet {
  for (const { localName } of childrenOf(root)) {
    const missing = NOT_TAKEN[localName ?? ''];
    if (missing) reading.leftOut.add(missing);
  }
  const rows: Rows = rowsOf(childOf(root, 'sheetData'), shared, reading);
  addValidations(root, rows, reading);
  addNotes(related(all, all.relations(part), 'comments'), rows);
  const conditions = conditionsOf(root, fills, reading);
  return {
    name,
    rows: Array.from(rows),
    widths: widthsOf(root, reading),
    names,
    ...frozenOf(root),
    ...(conditions.length > 0 ? { conditions } : {}),
    ...printOf(root),
  };
}
