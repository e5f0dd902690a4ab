import {
  type IRange,
  IUniverInstanceService,
  type Nullable,
  type Univer,
  UniverInstanceType,
  type Workbook,
} from '../core.js';
import { servicesOf } from '../services.js';
import {
  ClearSelectionContentCommand,
  type ISetRangeValuesMutationParams,
  SetRangeValuesMutation,
  SheetInterceptorService,
  SheetsSelectionsService,
} from '../sheets.js';
import { within } from '../within.js';

interface Cleared {
  readonly unitId?: string;
  readonly subUnitId?: string;
  readonly ranges?: readonly IRange[];
}

const NOTHING = { redos: [], undos: [] };

/**
 * A cell's rule, its note and its place in a chart belong to the cell, not to what was typed into it. The engine
 * empties a cell of them as well; they are put back in the same step.
 */
export function keepRulesOfEmptiedCells(univer: Univer): void {
  const injector = servicesOf(univer);
  const selected = () =>
    injector
      .get(SheetsSelectionsService)
      .getCurrentSelections()
      .map(({ range }) => range);
  injector.get(SheetInterceptorService).interceptCommand({
    getMutations({ id, params }) {
      if (id !== ClearSelectionContentCommand.id) return NOTHING;
      const { unitId, subUnitId, ranges = selected() } = (params ?? {}) as Cleared;
      const workbook = injector
        .get(IUniverInstanceService)
        .getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
      const sheet = subUnitId ? workbook?.getSheetBySheetId(subUnitId) : workbook?.getActiveSheet();
      if (!workbook || !sheet) return NOTHING;
      const cellValue: NonNullable<ISetRangeValuesMutationParams['cellValue']> = {};
      let found = false;
      for (const range of ranges) {
        sheet.getCellMatrix().forValue((row, column, cell: Nullable<{ custom?: unknown }>) => {
          if (!within(range, row, column) || !cell?.custom) return;
          found = true;
          cellValue[row] = { ...cellValue[row], [column]: { custom: cell.custom } };
        });
      }
      if (!found) return NOTHING;
      const kept = { unitId: unitId ?? workbook.getUnitId(), subUnitId: sheet.getSheetId(), cellValue };
      return { redos: [{ id: SetRangeValuesMutation.id, params: kept }], undos: [] };
    },
  });
}
