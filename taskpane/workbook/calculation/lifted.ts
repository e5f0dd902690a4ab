import type { ICommandInfo } from '../engine/core.js';
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from '../engine/sheets.js';
import type { Place } from './signals.js';

/** Those of the resting formulas that rest still: one that was written over is calculated again. */
export function lifted(rests: readonly Place[], { id, params }: ICommandInfo): readonly Place[] {
  if (rests.length === 0 || id !== SetRangeValuesMutation.id) return rests;
  const { subUnitId, cellValue } = params as ISetRangeValuesMutationParams;
  return rests.filter(([sheet, row, column]) => {
    const written = sheet === subUnitId ? cellValue?.[row]?.[column] : undefined;
    return !written || !('f' in written || 'si' in written);
  });
}
