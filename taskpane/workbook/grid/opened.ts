import { ILayoutService } from '@univerjs/ui';
import type { StarterSheet } from '../../../src/sheets/sheet.js';
import type { Block, Selection } from '../../host/host.js';
import { type Autosave, autosave, type SaveState } from '../store/autosave.js';
import type { Grid } from './boot.js';
import { readSelection, watchSelection } from './selection.js';
import { insertStarter } from './sheets.js';
import { type SheetTabs, sheetTabs } from './tabs.js';
import { writeBlock } from './write.js';

/** All that the rest of the page does with the open workbook, so that it needs nothing of the engine itself. */
export interface OpenedWorkbook {
  readonly tabs: SheetTabs;
  selection(): Selection;
  onSelection(listener: (selection: Selection) => void): () => void;
  write(block: Block, overwrite: boolean): { readonly address: string };
  insertSheet(starter: StarterSheet): void;
  autosave(tell: (state: SaveState) => void): Autosave;
  /** Gives the keys to the cells. */
  focus(): void;
}

export function openedWorkbook(grid: Grid): OpenedWorkbook {
  return {
    tabs: sheetTabs(grid),
    selection: () => readSelection(grid),
    onSelection: (listener) => watchSelection(grid, listener),
    write: (block, overwrite) => writeBlock(grid, block, overwrite),
    insertSheet: (starter) => {
      insertStarter(grid, starter);
    },
    autosave: (tell) => autosave(grid, tell),
    focus: () => grid.univer.__getInjector().get(ILayoutService).focus(),
  };
}
