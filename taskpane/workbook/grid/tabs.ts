import {
  InsertSheetMutation,
  RemoveSheetMutation,
  SetWorksheetActiveOperation,
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
}

export interface SheetTabs {
  watch(listener: (tabs: SheetTab[]) => void): () => void;
  show(id: string): void;
  /** @param nameOf the name of the sheet with this number */
  add(nameOf: (number: string) => string): void;
  remove(id: string): void;
  /** Why the sheet was not renamed; or nothing. */
  rename(id: string, name: string): NameRefusal | undefined;
}

const CHANGES = new Set<string>([
  InsertSheetMutation.id,
  RemoveSheetMutation.id,
  SetWorksheetActiveOperation.id,
  SetWorksheetNameMutation.id,
  SetWorksheetOrderMutation.id,
]);

/** The sheets as tabs, and what can be done with them. */
export function sheetTabs(grid: Grid): SheetTabs {
  const workbook = workbookOf(grid);
  const list = (): SheetTab[] => {
    const active = workbook.getActiveSheet().getSheetId();
    return workbook.getSheets().map((sheet) => {
      const id = sheet.getSheetId();
      return { id, name: sheet.getSheetName(), active: id === active };
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
  };
}
