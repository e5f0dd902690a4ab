import { ICommandService } from '../engine/core.js';
import { servicesOf } from '../engine/services.js';
import {
  type IRemoveSheetMutationParams,
  type ISetRangeValuesMutationParams,
  RemoveSheetMutation,
  SetRangeValuesMutation,
} from '../engine/sheets.js';
import type { Grid } from './boot.js';

export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Takes a notice about a cell back once someone writes into the cell, or its sheet is gone. */
export function untilWritten(grid: Grid, { sheet, row, column }: CellPlace, withdraw: () => void): void {
  const gone = (id: string, params: unknown) => {
    if (id === RemoveSheetMutation.id) return (params as IRemoveSheetMutationParams).subUnitId === sheet;
    if (id !== SetRangeValuesMutation.id) return false;
    const { subUnitId, cellValue } = params as ISetRangeValuesMutationParams;
    return subUnitId === sheet && cellValue?.[row]?.[column] !== undefined;
  };
  // What is being written at this moment is what the notice is about.
  setTimeout(() => {
    const watching = servicesOf(grid.univer)
      .get(ICommandService)
      .onCommandExecuted(({ id, params }, options) => {
        if (options?.fromFormula || options?.fromSync || !gone(id, params)) return;
        watching.dispose();
        withdraw();
      });
  });
}
