import { cellReference } from '../../host/address.js';
import type { Turned } from '../../host/host.js';
import type { RangeReference } from '../../host/reference.js';
import { Refusal } from '../../host/refusal.js';
import { around } from '../../host/region.js';
import { CellValueType, type ICellData, type IStyleData, type Nullable } from '../engine/core.js';
import type { FWorksheet } from '../engine/facade.js';
import { SetRangeValuesCommand } from '../engine/sheets.js';
import { notationOfBlock } from '../entry/blockMark.js';
import { looksLikeNumber, numberInText } from '../entry/textNumber.js';
import type { Writing } from '../entry/writing.js';
import { UNFORMATTED } from './bookStyle.js';
import type { Grid } from './boot.js';
import { contentOf, hasFormula } from './cells.js';
import { markCorners } from './corners.js';
import { entryCell } from './entryCell.js';
import { keptFormula } from './kept.js';
import { activeCell, shownAt, workbookOf } from './place.js';

/** Its colour is seen at 4.5:1 on the white and on the dark ground of the cells. */
const CORNER = { at: 'tr', color: '#8a6d00', priority: 1 } as const;

/** The text that somebody entered into a cell; what a formula answers with is none. */
function enteredText(cell: Nullable<ICellData>): string | undefined {
  if (!cell || hasFormula(cell) || keptFormula(cell) !== undefined) return undefined;
  if (cell.t === CellValueType.NUMBER || cell.t === CellValueType.BOOLEAN) return undefined;
  const content = contentOf(cell);
  return typeof content === 'string' ? content : undefined;
}

/** Draws a small corner into each cell whose text looks like a number: no formula counts it. */
export function markTextNumbers(grid: Grid, writing: Writing): void {
  markCorners(grid, CORNER, (cell) => {
    const text = enteredText(cell);
    return text !== undefined && looksLikeNumber(text, writing);
  });
}

interface Found {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** The texts of the table around a cell that look like numbers, row by row. */
function textsAround(grid: Grid, sheet: FWorksheet, top: number, left: number, writing: Writing): readonly Found[] {
  const isEmpty = (row: number, column: number) => contentOf(shownAt(grid, sheet, row, column).cell) === null;
  const most = { top: 0, left: 0, bottom: sheet.getLastRow(), right: sheet.getLastColumn() };
  const block = around(top, left, isEmpty, most);
  const found: Found[] = [];
  for (let row = block.top; row <= block.bottom; row += 1) {
    for (let column = block.left; column <= block.right; column += 1) {
      const text = enteredText(sheet.getSheet().getCellRaw(row, column));
      if (text !== undefined && looksLikeNumber(text, writing)) found.push({ row, column, text });
    }
  }
  return found;
}

function selectedPlace(grid: Grid): RangeReference {
  const cell = activeCell(grid);
  return cellReference(workbookOf(grid).getActiveSheet().getSheetName(), cell.getRow(), cell.getColumn());
}

/** A format that says text would keep it one. */
const lookOf = ({ n, ...look }: IStyleData): IStyleData => ({
  ...look,
  ...(n ? { n: n.pattern === '@' ? { pattern: UNFORMATTED } : n } : {}),
});

/** Turns the texts around a cell that look like numbers into numbers, by the marks that they show together. */
export function turnIntoNumbers(grid: Grid, writing: Writing, place = selectedPlace(grid)): Turned {
  const { sheet: name, top, left } = place;
  const workbook = workbookOf(grid);
  const sheet = workbook.getSheetByName(name);
  if (!sheet) throw new Refusal((words) => words.gone);
  const found = textsAround(grid, sheet, top, left, writing);
  const { notation, shownBy } = notationOfBlock(
    found.map(({ text }) => text),
    writing.notation,
  );
  const styles = workbook.getWorkbook().getStyles();
  const value: Record<number, Record<number, ICellData>> = {};
  const turned = found.filter(({ row, column, text }) => {
    const entry = numberInText(text, { ...writing, notation });
    if (!entry) return false;
    const look = lookOf(styles.get(sheet.getSheet().getCellRaw(row, column)?.s) ?? {});
    value[row] ??= {};
    value[row][column] = { s: look, ...entryCell(entry, text, look) };
    return true;
  });
  const columns = turned.map(({ column }) => column);
  const rectangle = {
    top: turned[0]?.row ?? top,
    bottom: turned.at(-1)?.row ?? top,
    left: turned.length > 0 ? Math.min(...columns) : left,
    right: turned.length > 0 ? Math.max(...columns) : left,
  };
  if (turned.length > 0) {
    const ids = { unitId: workbook.getId(), subUnitId: sheet.getSheetId() };
    const { top: startRow, bottom: endRow, left: startColumn, right: endColumn } = rectangle;
    const range = { startRow, endRow, startColumn, endColumn };
    grid.api.syncExecuteCommand(SetRangeValuesCommand.id, { ...ids, range, value });
  }
  return {
    place: { ...place, ...rectangle },
    count: turned.length,
    left: found.length - turned.length,
    ...(shownBy === undefined ? {} : { shownBy }),
  };
}
