import {
  CellValueType,
  ICommandService,
  type Injector,
  IResourceLoaderService,
  UniverInstanceType,
  type Workbook,
} from '../engine/core.js';
import { ErrorType, FormulaDataModel, SetArrayFormulaDataMutation } from '../engine/formula.js';
import { IRemoteInstanceService } from '../engine/rpc.js';
import { SetRangeValuesMutation } from '../engine/sheets.js';
import { rulesOf } from './rules.js';
import type { Place } from './signals.js';

const LOCAL = { onlyLocal: true };

/** Gives a thread that begins with nothing the workbook as it stands, with what its answers fill and its rules. */
export function handingOver(injector: Injector): (unit: Workbook) => void {
  const rules = rulesOf(injector.get(ICommandService));
  return (unit) => {
    const unitID = unit.getUnitId();
    const model = injector.get(FormulaDataModel);
    const remote = injector.get(IRemoteInstanceService);
    void remote.createInstance({
      unitID,
      type: UniverInstanceType.UNIVER_SHEET,
      snapshot: injector.get(IResourceLoaderService).saveUnit(unitID) ?? unit.getSnapshot(),
    });
    const params = {
      arrayFormulaRange: model.getArrayFormulaRange(),
      arrayFormulaCellData: model.getArrayFormulaCellData(),
    };
    void remote.syncMutation({ mutationInfo: { id: SetArrayFormulaDataMutation.id, params } }, LOCAL);
    for (const mutationInfo of rules()) void remote.syncMutation({ mutationInfo }, LOCAL);
  };
}

/** A formula that never had a value shows that it has none. */
export function markEmpty(injector: Injector, unit: Workbook, [sheet, row, column]: Place): void {
  const { v } = unit.getSheetBySheetId(sheet)?.getCellRaw(row, column) ?? {};
  if (row < 0 || (v !== undefined && v !== null && v !== '')) return;
  const cellValue = { [row]: { [column]: { v: ErrorType.CALC, t: CellValueType.STRING } } };
  injector
    .get(ICommandService)
    .syncExecuteCommand(
      SetRangeValuesMutation.id,
      { unitId: unit.getUnitId(), subUnitId: sheet, cellValue },
      { ...LOCAL, fromFormula: true },
    );
}
