import { ICommandService, IUniverInstanceService, type Univer, UniverInstanceType, type Workbook } from '../core.js';
import { servicesOf } from '../services.js';
import { type IRemoveSheetMutationParams, RemoveSheetMutation, SetWorksheetActiveOperation } from '../sheets.js';

/**
 * The sheet that is shown is left before it goes. The engine leaves it only afterwards; what reads it is rewritten in
 * between, which breaks off where a sheet is drawn that is not there, and deleting it can then not be undone.
 */
export function leaveGoingSheet(univer: Univer): void {
  const injector = servicesOf(univer);
  const commands = injector.get(ICommandService);
  const units = injector.get(IUniverInstanceService);
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== RemoveSheetMutation.id) return;
    const { unitId, subUnitId } = params as IRemoveSheetMutationParams;
    const workbook = units.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
    if (workbook?.getActiveSheet()?.getSheetId() !== subUnitId) return;
    const sheets = workbook.getSheets();
    const place = sheets.findIndex((sheet) => sheet.getSheetId() === subUnitId);
    const stay = [...sheets.slice(place + 1), ...sheets.slice(0, place).reverse()].find((one) => !one.isSheetHidden());
    if (!stay) return;
    commands.syncExecuteCommand(SetWorksheetActiveOperation.id, { unitId, subUnitId: stay.getSheetId() });
  });
}
