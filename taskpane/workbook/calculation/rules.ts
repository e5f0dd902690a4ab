import type { ICommandService, IMutationInfo } from '../engine/core.js';
import {
  type IRemoveOtherFormulaMutationParams,
  type ISetOtherFormulaMutationParams,
  RemoveOtherFormulaMutation,
  SetOtherFormulaMutation,
} from '../engine/formula.js';

/** The formulas of rules and formats are in no cell, so they are kept here for a thread that begins anew. */
export function rulesOf(commands: ICommandService): () => readonly IMutationInfo[] {
  const known = new Map<string, ISetOtherFormulaMutationParams>();
  commands.onCommandExecuted(({ id, params }) => {
    if (id === SetOtherFormulaMutation.id) {
      const { formulaMap, ...place } = params as ISetOtherFormulaMutationParams;
      for (const [rule, item] of Object.entries(formulaMap))
        known.set(rule, { ...place, formulaMap: { [rule]: item } });
    }
    if (id === RemoveOtherFormulaMutation.id)
      for (const rule of (params as IRemoveOtherFormulaMutationParams).formulaIdList) known.delete(rule);
  });
  return () => [...known.values()].map((params) => ({ id: SetOtherFormulaMutation.id, params }));
}
