import {
  InsertSheetMutation,
  RemoveSheetMutation,
  SetTabColorMutation,
  SetWorksheetActiveOperation,
  SetWorksheetHideMutation,
  SetWorksheetNameMutation,
  SetWorksheetOrderMutation,
} from '../engine/sheets.js';
import type { Grid } from './boot.js';
import { workbookOf } from './place.js';
import { insertBlank, type NameRefusal, nameRefusal } from './sheets.js';

export interface SheetTab {
  readonly id: string;
  readonly name: string;
  readonly active: boolean;
  readonly colour: string | undefined;
  readonly hidden: boolean;
}

export interface SheetTabs {
  watch(listener: (tabs: SheetTab[]) => void): () => void;
  show(id: string): void;
  /** @param nameOf the name of the sheet with this number */
  add(nameOf: (number: string) => string): void;
  remove(id: string): void;
  /** Why the sheet was not renamed; or nothing. */
  rename(id: string, name: string): NameRefusal | undefined;
  /** Moves a tab by one place to the left (-1) or to the right (1), past hidden ones. */
  move(id: string, by: -1 | 1): void;
  paint(id: string, colour: string | undefined): void;
  /** Hides a sheet, unless no other one is shown; formulas go on reading it. */
  hide(id: string): void;
  unhide(id: string): void;
}

const CHANGES = new Set<string>([
  InsertSheetMutation.id,
  RemoveSheetMutation.id,
  SetWorksheetActiveOperation.id,
  SetWorksheetNameMutation.id,
  SetWorksheetOrderMutation.id,
  SetTabColorMutation.id,
  SetWorksheetHideMutation.id,
]);

/** The sheets as tabs, and what can be done with them. */
export function sheetTabs(grid: Grid): SheetTabs {
  const workbook = workbookOf(grid);
  const list = (): SheetTab[] => {
    const active = workbook.getActiveSheet().getSheetId();
    return workbook.getSheets().map((sheet) => {
      const id = sheet.getSheetId();
      const colour = sheet.getTabColor() || undefined;
      return { id, name: sheet.getSheetName(), active: id === active, colour, hidden: sheet.isSheetHidden() };
    });
  };
  return {
    watch(listener) {
      listener(list());
      const subscription = workbook.onCommandExecuted(({ id }) => {
        if (CHANGES.has(id)) listener(list());
      });
      return () => subscription.dispose();
    },
    show: (id) => {
      if (workbook.getSheetBySheetId(id)) workbook.setActiveSheet(id);
    },
    add: (nameOf) => {
      insertBlank(grid, nameOf);
    },
    remove: (id) => workbook.deleteSheet(id),
    rename(id, name) {
      const refusal = nameRefusal(grid, id, name);
      if (!refusal) workbook.getSheetBySheetId(id)?.setName(name);
      return refusal;
    },
    move(id, by) {
      const sheets = workbook.getSheets();
      let place = sheets.findIndex((sheet) => sheet.getSheetId() === id);
      const sheet = sheets[place];
      do place += by;
      while (sheets[place]?.isSheetHidden());
      if (sheet && sheets[place]) workbook.moveSheet(sheet, place);
    },
    paint: (id, colour) => void workbook.getSheetBySheetId(id)?.setTabColor(colour ?? ''),
    hide(id) {
      if (workbook.getSheets().filter((sheet) => !sheet.isSheetHidden()).length > 1)
        workbook.getSheetBySheetId(id)?.hideSheet();
    },
    unhide(id) {
      workbook.getSheetBySheetId(id)?.showSheet();
      workbook.setActiveSheet(id);
    },
  };
}
