import { CommandType, type ICellData, ICommandService, LocaleService, type Nullable } from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import { SetRangeValuesCommand } from '../engine/sheets.js';
import { ContextMenuGroup, ContextMenuPosition, IMenuManagerService, MenuItemType } from '../engine/ui.js';
import type { Grid } from './boot.js';
import { markCorners } from './corners.js';
import { activeCell, address, workbookOf } from './place.js';

/** Drawn after the mark of texts that look like numbers, which has the corner above. */
const CORNER = { at: 'br', color: '#4078b0', priority: 0 } as const;
const ASK = 'powderbook.command.note';

/** The note of one cell, and what is written in its place; an empty text takes it away. */
export interface AskedNote {
  readonly address: string;
  readonly text: string;
  write(text: string): void;
}

type Custom = Readonly<Record<string, unknown>>;

/** What a user wrote about a cell. It is a mark of the cell, so that it goes wherever the cell goes. */
export function noteOf(cell: Nullable<ICellData>): string | undefined {
  const { remark } = (cell?.custom ?? {}) as Custom;
  return typeof remark === 'string' && remark !== '' ? remark : undefined;
}

/** The same with a note. */
export const withNote = (cell: ICellData, remark: string | undefined): ICellData =>
  remark === undefined ? cell : { ...cell, custom: { ...cell.custom, remark } };

/** Draws a small corner into each cell that has a note, below the one of texts that look like numbers. */
export const markNotes = (grid: Grid): void => markCorners(grid, CORNER, (cell) => noteOf(cell) !== undefined);

/** The note of the selected cell, to be changed there even if another cell is selected meanwhile. */
export function selectedNote(grid: Grid): AskedNote {
  const cell = activeCell(grid);
  const [row, column] = [cell.getRow(), cell.getColumn()];
  const sheet = workbookOf(grid).getActiveSheet();
  const raw = () => sheet.getSheet().getCellRaw(row, column);
  return {
    address: address(row, column),
    text: noteOf(raw()) ?? '',
    write(text) {
      const { remark: _, ...others } = (raw()?.custom ?? {}) as Custom;
      const custom = text === '' ? others : { ...others, remark: text };
      const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
      const ids = { unitId: workbookOf(grid).getId(), subUnitId: sheet.getSheetId() };
      const value = { custom: Object.keys(custom).length > 0 ? custom : null };
      grid.api.syncExecuteCommand(SetRangeValuesCommand.id, { ...ids, range, value });
    },
  };
}

/** An entry of the menu on cells that asks for the note of the selected one. */
export function addNoteToMenu(grid: Grid, title: string, ask: () => void): void {
  const injector = servicesOf(grid.univer);
  const handler = () => {
    ask();
    return true;
  };
  injector.get(ICommandService).registerCommand({ id: ASK, type: CommandType.COMMAND, handler });
  const words = injector.get(LocaleService);
  words.load({ [words.getCurrentLocale()]: { powderbook: { note: title } } });
  injector.get(IMenuManagerService).mergeMenu({
    [ContextMenuPosition.MAIN_AREA]: {
      [ContextMenuGroup.DATA]: {
        [ASK]: {
          order: 0,
          menuItemFactory: () => ({ id: ASK, type: MenuItemType.BUTTON, title: 'powderbook.note' }),
        },
      },
    },
  });
}
