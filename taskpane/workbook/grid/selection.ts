import { filledBy } from '../../host/filledBy.js';
import type { Selection } from '../../host/host.js';
import type { FWorksheet } from '../engine/facade.js';
import { SetFormulaCalculationResultMutation } from '../engine/formula.js';
import { servicesOf } from '../engine/services.js';
import {
  SetRangeValuesMutation,
  SetSelectionsOperation,
  SetWorksheetActiveOperation,
  SheetsSelectionsService,
} from '../engine/sheets.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { keptFormula } from './kept.js';
import { noteOf } from './notes.js';
import { activeCell, address, isErrorCell, shownAt, workbookOf } from './place.js';

/** One cell as the pane wants it, with the sentence behind an error. */
export function readCell(grid: Grid, sheet: FWorksheet, row: number, column: number): Selection {
  const { cell, origin } = shownAt(grid, sheet, row, column);
  const formula = origin ? sheet.getRange(origin.row, origin.column).getFormula() : '';
  const name = sheet.getSheetName();
  const message =
    origin && isErrorCell(cell)
      ? grid.messages.behind(
          { sheetId: sheet.getSheetId(), ...origin },
          formula,
          String(cell?.v),
          row - origin.row,
          column - origin.column,
        )
      : undefined;
  const raw = sheet.getSheet().getCellRaw(row, column);
  const hint: unknown = raw?.custom?.note;
  const note = [typeof hint === 'string' ? hint : '', noteOf(raw) ?? ''].filter(Boolean).join('\n');
  const kept = keptFormula(raw);
  return {
    sheet: name,
    address: address(row, column),
    ...(origin && formula ? filledBy(name, { row, column }, origin, formula) : {}),
    value: contentOf(cell),
    ...(message ? { message } : {}),
    ...(kept === undefined ? {} : { kept }),
    ...(note ? { note } : {}),
  };
}

export function readSelection(grid: Grid): Selection {
  const cell = activeCell(grid);
  return readCell(grid, workbookOf(grid).getActiveSheet(), cell.getRow(), cell.getColumn());
}

const CHANGES = new Set<string>([
  SetSelectionsOperation.id,
  SetWorksheetActiveOperation.id,
  SetRangeValuesMutation.id,
  SetFormulaCalculationResultMutation.id,
]);

/** Calls the listener whenever the selected cell, or what it shows, has changed; or whenever either may have. */
export function watchSelection(
  grid: Grid,
  listener: (selection: Selection) => void,
  { always = false } = {},
): () => void {
  let last = '';
  let waiting = 0;
  const look = () => {
    waiting = 0;
    const selection = readSelection(grid);
    const text = JSON.stringify(selection);
    if (text === last && !always) return;
    last = text;
    listener(selection);
  };
  // The engine announces a calculation's result before all of it is in place.
  const later = () => {
    if (waiting === 0) waiting = window.setTimeout(look, 30);
  };
  const commands = workbookOf(grid).onCommandExecuted(({ id }) => {
    if (CHANGES.has(id)) later();
  });
  // A cell that is chosen by its name is selected without a command.
  const selections = servicesOf(grid.univer).get(SheetsSelectionsService).selectionSet$.subscribe(later);
  look();
  return () => {
    window.clearTimeout(waiting);
    commands.dispose();
    selections.unsubscribe();
  };
}
