import { CommandType, ICommandService } from '../engine/core.js';
import type { FWorksheet } from '../engine/facade.js';
import { openMenuAt } from '../engine/mends/menuKeys.js';
import { SHEET_VIEWPORT_KEY } from '../engine/render.js';
import { servicesOf } from '../engine/services.js';
import { whenSheetEditorFocused } from '../engine/sheetsUi.js';
import { IShortcutService, KeyCode, MetaKeys } from '../engine/ui.js';
import type { Grid } from './boot.js';
import { activeCell, workbookOf } from './place.js';
import { reveal } from './reveal.js';
import { today } from './today.js';

const { CTRL_COMMAND: CTRL, SHIFT } = MetaKeys;
/** Keys that the engine has no name for. */
const PAGE_UP = 33;
const PAGE_DOWN = 34;
const END = 35;
const HOME = 36;
const MENU = 93;
const SEMICOLON = 186;
/** Above the engine's own keys. */
const FIRST = 200;

type Spot = readonly [row: number, column: number];

/** Selects one cell; or everything from the cell that a selection began with. */
function select(grid: Grid, [row, column]: Spot, extend: boolean) {
  const sheet = workbookOf(grid).getActiveSheet();
  const to: Spot = [
    Math.min(Math.max(0, row), sheet.getMaxRows() - 1),
    Math.min(Math.max(0, column), sheet.getMaxColumns() - 1),
  ];
  const cell = activeCell(grid);
  const from: Spot = extend ? [cell.getRow(), cell.getColumn()] : to;
  const [top, left] = [Math.min(from[0], to[0]), Math.min(from[1], to[1])];
  sheet.getRange(top, left, Math.abs(from[0] - to[0]) + 1, Math.abs(from[1] - to[1]) + 1).activate();
  reveal(sheet, to[0], to[1]);
}

/** The end of the selection that moves: the one that lies opposite of the cell it began with. */
function movingEnd(grid: Grid): Spot {
  const cell = activeCell(grid);
  const range = workbookOf(grid).getActiveSheet().getActiveRange()?.getRange();
  if (!range) return [cell.getRow(), cell.getColumn()];
  return [
    range.startRow < cell.getRow() ? range.startRow : range.endRow,
    range.startColumn < cell.getColumn() ? range.startColumn : range.endColumn,
  ];
}

/** Where each key leads from a cell. */
function leads(grid: Grid): readonly (readonly [binding: number, to: (from: Spot) => Spot])[] {
  const sheet = () => workbookOf(grid).getActiveSheet();
  const page = () => {
    const seen = sheet().getVisibleRangesOfAllViewports()?.get(SHEET_VIEWPORT_KEY.VIEW_MAIN);
    return seen ? Math.max(1, seen.endRow - seen.startRow - 1) : 1;
  };
  return [
    [PAGE_DOWN, ([row, column]) => [row + page(), column]],
    [PAGE_UP, ([row, column]) => [row - page(), column]],
    [HOME, ([row]) => [row, 0]],
    [END, ([row]) => [row, sheet().getLastColumn()]],
    [HOME | CTRL, () => [0, 0]],
    [END | CTRL, () => [sheet().getLastRow(), sheet().getLastColumn()]],
  ];
}

/** By how many pixels a cell is shown further up and to the left than the sheet has it. */
function scrolled(sheet: FWorksheet, row: number, column: number) {
  const { xSplit, ySplit } = sheet.getFreeze();
  const seen = sheet.getVisibleRangesOfAllViewports()?.get(SHEET_VIEWPORT_KEY.VIEW_MAIN);
  if (!seen) return {};
  const first = sheet.getRange(seen.startRow, seen.startColumn).getCellRect();
  const unscrolled = sheet.getRange(Math.max(0, ySplit), Math.max(0, xSplit)).getCellRect();
  return {
    scrollX: column < xSplit ? 0 : first.left - unscrolled.left,
    scrollY: row < ySplit ? 0 : first.top - unscrolled.top,
  };
}

/** Opens the engine's menu on cells where the selected one stands, and hands it the keys. */
function openMenu(grid: Grid, container: HTMLElement) {
  const cell = activeCell(grid);
  const sheet = workbookOf(grid).getActiveSheet();
  reveal(sheet, cell.getRow(), cell.getColumn());
  const { right, bottom } = cell.getCellRect();
  const { scrollX = 0, scrollY = 0 } = scrolled(sheet, cell.getRow(), cell.getColumn());
  const corner = container.querySelector('[id^="univer-sheet-main-canvas"]')?.getBoundingClientRect();
  const zoom = sheet.getZoom();
  const place = {
    clientX: (corner?.left ?? 0) + (right - scrollX) * zoom - 4,
    clientY: (corner?.top ?? 0) + (bottom - scrollY) * zoom - 4,
  };
  openMenuAt(grid.univer, place);
}

interface Opens {
  formats(): void;
  find(): void;
  replace(): void;
  note(): void;
}

/** The keys that hands know from worksheets and that the engine lacks. */
export function addKeys(
  grid: Grid,
  container: HTMLElement,
  language: string,
  { formats, find, replace, note }: Opens,
): void {
  const injector = servicesOf(grid.univer);
  const [commands, shortcuts] = [injector.get(ICommandService), injector.get(IShortcutService)];
  const sheet = () => workbookOf(grid).getActiveSheet();
  let number = 0;
  const key = (bindings: readonly number[], act: () => void) => {
    number += 1;
    const id = `powderbook.command.key-${number}`;
    const handler = () => {
      act();
      return true;
    };
    commands.registerCommand({ id, type: CommandType.COMMAND, handler });
    for (const binding of bindings)
      shortcuts.registerShortcut({ id, binding, priority: FIRST, preconditions: whenSheetEditorFocused });
  };
  for (const [binding, to] of leads(grid)) {
    key([binding], () => select(grid, to([activeCell(grid).getRow(), activeCell(grid).getColumn()]), false));
    key([binding | SHIFT], () => select(grid, to(movingEnd(grid)), true));
  }
  key([KeyCode.SPACE | CTRL], () =>
    sheet().getRange(0, activeCell(grid).getColumn(), sheet().getMaxRows(), 1).activate(),
  );
  key([KeyCode.SPACE | SHIFT], () =>
    sheet().getRange(activeCell(grid).getRow(), 0, 1, sheet().getMaxColumns()).activate(),
  );
  // On a German keyboard “;” needs Shift and stands on the comma.
  key([SEMICOLON | CTRL, KeyCode.COMMA | CTRL | SHIFT], () =>
    activeCell(grid).setValue(today(activeCell(grid), language)),
  );
  key([KeyCode.Digit1 | CTRL], formats);
  key([KeyCode.F | CTRL], find);
  key([KeyCode.H | CTRL], replace);
  key([KeyCode.F2 | SHIFT], note);
  key([KeyCode.F10 | SHIFT, MENU], () => openMenu(grid, container));
}
