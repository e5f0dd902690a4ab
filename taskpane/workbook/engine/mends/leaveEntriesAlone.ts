import { type ICellData, ICommandService, IUniverInstanceService, type Univer, type Workbook } from '../core.js';
import { servicesOf } from '../services.js';
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from '../sheets.js';

const isEmpty = ({ v }: ICellData) => v === undefined || v === null || v === '';

/**
 * An answer that was on its way while its formula was written over would take the new entry's place. It is dropped
 * before it is set: only a formula, or an empty cell, takes an answer.
 */
export function leaveEntriesAlone(univer: Univer): void {
  const injector = servicesOf(univer);
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
    if (id !== SetRangeValuesMutation.id || !options?.applyFormulaCalculationResult || !options.fromSync) return;
    const { unitId, subUnitId, cellValue } = params as ISetRangeValuesMutationParams;
    const sheet = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId)?.getSheetBySheetId(subUnitId);
    for (const [row, cells] of Object.entries(cellValue ?? {})) {
      for (const column of Object.keys(cells ?? {})) {
        const own = sheet?.getCellRaw(Number(row), Number(column));
        if (own && !own.f && !own.si && !isEmpty(own)) delete (cells as Record<string, unknown>)[column];
      }
    }
  });
}
