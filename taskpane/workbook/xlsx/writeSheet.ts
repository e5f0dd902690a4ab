import { a1 } from '../../host/a1.js';
import type { BookCell, BookSheet } from './book.js';
import type { Ranges } from './formulaNodes.js';
import type { PagedSheet } from './ownPage.js';
import { asOlder, withoutPick } from './plainFormula.js';
import { widthInFile } from './width.js';
import { filterPart } from './writeFilter.js';
import { formulaInFile } from './writeFormula.js';
import { notesOf } from './writeNotes.js';
import { pageParts } from './writePage.js';
import { MAIN, RELATIONSHIPS } from './writeParts.js';
import { rulesOf } from './writeRules.js';
import { colour, type WrittenStyles } from './writeStyles.js';
import { element, escaped, escapedText, part } from './writeXml.js';

const textOf = (text: string, space = /^\s|\s$|\n/.test(text)) =>
  element('t', { 'xml:space': space ? 'preserve' : undefined }, escapedText(text));

interface Place {
  readonly row: number;
  readonly column: number;
}

/** What is the same for all cells of a workbook. */
export interface Written {
  readonly styles: WrittenStyles;
  /** Names that stand for cells. */
  readonly ranges: Ranges;
}

function formulaOf(cell: BookCell, { row, column }: Place, ranges: Ranges): { xml: string; dynamic: boolean } {
  const { formula, spill, fixed, kept, error } = cell;
  if (formula === undefined) return { xml: kept === undefined ? '' : element('f', {}, escaped(kept)), dynamic: false };
  const text = formula.replace(/^=/, '');
  const place = a1(row, column);
  if (fixed) {
    const { rows, columns } = fixed;
    const one = rows * columns === 1;
    const ref = one ? place : `${place}:${a1(row + rows - 1, column + columns - 1)}`;
    const own = formulaInFile(one ? withoutPick(text) : text);
    return { xml: element('f', { t: 'array', ref }, escaped(own)), dynamic: false };
  }
  const plain = spill === undefined && error !== '#SPILL!' ? asOlder(text, ranges) : undefined;
  if (plain !== undefined) return { xml: element('f', {}, escaped(formulaInFile(plain))), dynamic: false };
  return { xml: element('f', { t: 'array', ref: spill ?? place }, escaped(formulaInFile(text))), dynamic: true };
}

function cellOf(cell: BookCell, place: Place, { styles, ranges }: Written): string {
  const { value, formula } = cell;
  // No file has a place for what is no number; a spreadsheet shows this error for it.
  const error = cell.error ?? (typeof value === 'number' && !Number.isFinite(value) ? '#NUM!' : undefined);
  const { xml, dynamic } = formulaOf(cell, place, ranges);
  const shared = { r: a1(place.row, place.column), s: styles.id(cell) || undefined, cm: dynamic ? 1 : undefined };
  if (error !== undefined) return element('c', { ...shared, t: 'e' }, xml, element('v', {}, escaped(error)));
  if (typeof value === 'number') return element('c', shared, xml, element('v', {}, String(value)));
  if (typeof value === 'boolean') return element('c', { ...shared, t: 'b' }, xml, element('v', {}, value ? '1' : '0'));
  if (typeof value !== 'string') return element('c', shared, xml);
  // The text of a formula is its last answer; any other text stands in its cell, whatever its first character.
  return formula === undefined && cell.kept === undefined
    ? element('c', { ...shared, t: 'inlineStr' }, element('is', {}, textOf(value)))
    : element('c', { ...shared, t: 'str' }, xml, element('v', {}, escapedText(value)));
}

function rowsOf({ rows, heights = [], filter, hiddenRows = [] }: BookSheet, written: Written): string[] {
  const filtered = filter?.hidden ?? [];
  const hidden = new Set([...filtered, ...hiddenRows]);
  const last = Math.max(rows.length, heights.length, (filtered.at(-1) ?? -1) + 1, (hiddenRows.at(-1) ?? -1) + 1);
  return Array.from({ length: last }, (_, r) => r).flatMap((r) => {
    const row = rows[r];
    const cells = (row ?? []).flatMap((cell, c) => (cell ? [cellOf(cell, { row: r, column: c }, written)] : []));
    const height = heights[r];
    const said = {
      hidden: hidden.has(r) ? 1 : undefined,
      ...(height === undefined ? {} : { ht: height, customHeight: 1 }),
    };
    const any = cells.length > 0 || height !== undefined || hidden.has(r);
    return any ? [element('row', { r: r + 1, ...said }, ...cells)] : [];
  });
}

function paneOf({ headerRows, labelColumns = 0 }: BookSheet): string {
  if (headerRows + labelColumns === 0) return '';
  const vertical = headerRows > 0 ? 'bottom' : 'top';
  return element('pane', {
    xSplit: labelColumns || undefined,
    ySplit: headerRows || undefined,
    topLeftCell: a1(headerRows, labelColumns),
    activePane: `${vertical}${labelColumns > 0 ? 'Right' : 'Left'}`,
    state: 'frozen',
  });
}

function viewOf(sheet: BookSheet, shown: boolean): string {
  const { zoom, plain } = sheet;
  const said = {
    showGridLines: plain ? 0 : undefined,
    tabSelected: shown ? 1 : undefined,
    zoomScale: zoom === undefined ? undefined : Math.round(zoom * 100),
    workbookViewId: 0,
  };
  return element('sheetView', said, paneOf(sheet));
}

/** In characters: that of a column of which a file says nothing. */
const USUAL_WIDTH = 9.140625;

function columnsOf({ widths, hiddenColumns = [] }: BookSheet): string[] {
  const hidden = new Set(hiddenColumns);
  const count = Math.max(widths.length, (hiddenColumns.at(-1) ?? -1) + 1);
  return Array.from({ length: count }, (_, column) => column).flatMap((column) => {
    const width = widths[column];
    if (width === undefined && !hidden.has(column)) return [];
    const own = width === undefined ? { width: USUAL_WIDTH } : { width: widthInFile(width), customWidth: 1 };
    return [element('col', { min: column + 1, max: column + 1, ...own, hidden: hidden.has(column) ? 1 : undefined })];
  });
}

/** One sheet of a workbook: cells, widths, rules and print. */
export function sheetPart(sheet: PagedSheet, written: Written, shown: boolean): string {
  const { tab, filter, page, charts = [] } = sheet;
  const drawn = charts.length > 0;
  const noted = notesOf(sheet).length > 0;
  const columns = columnsOf(sheet);
  return part(
    element(
      'worksheet',
      { xmlns: MAIN, 'xmlns:r': drawn || noted ? RELATIONSHIPS : undefined },
      element(
        'sheetPr',
        { filterMode: filter?.hidden?.length ? 1 : undefined },
        tab ? colour('tabColor', tab) : '',
        element('pageSetUpPr', { fitToPage: page.fits ? 1 : 0 }),
      ),
      element('sheetViews', {}, viewOf(sheet, shown)),
      element('sheetFormatPr', { defaultRowHeight: 15 }),
      columns.length > 0 ? element('cols', {}, ...columns) : '',
      `<sheetData>${rowsOf(sheet, written).join('')}</sheetData>`,
      filter ? filterPart(filter, written.styles) : '',
      ...rulesOf(sheet),
      ...pageParts(page),
      drawn ? element('drawing', { 'r:id': 'rId1' }) : '',
      noted ? element('legacyDrawing', { 'r:id': drawn ? 'rId2' : 'rId1' }) : '',
    ),
  );
}
