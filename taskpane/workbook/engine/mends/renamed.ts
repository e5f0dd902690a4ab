import { ICommandService, IUniverInstanceService, type Univer, UniverInstanceType, type Workbook } from '../core.js';
import {
  type IFormulaDirtyData,
  IFunctionService,
  type ISetDefinedNameMutationParam,
  LexerTreeBuilder,
  RemoveDefinedNameMutation,
  SetDefinedNameMutation,
  SetFormulaCalculationStartMutation,
} from '../formula.js';

import { servicesOf } from '../services.js';

/** Stands in every formula, so that the engine forgets how it has read any of them. */
const EVERY_FORMULA = '=';

/**
 * The engine keeps a formula as it was read when its names meant something else, and so its old figure. Here all
 * formulas are read and calculated anew once what a name means has changed.
 */
export function calculateAnewWhereNamesChange(univer: Univer): void {
  const injector = servicesOf(univer);
  const changed = new Set<string>();
  const sheetsOf = (unit: string) =>
    injector
      .get(IUniverInstanceService)
      .getUnit<Workbook>(unit, UniverInstanceType.UNIVER_SHEET)
      ?.getSheets()
      .map((sheet) => [sheet.getSheetId(), sheet.getName()]) ?? [];

  const commands = injector.get(ICommandService);
  commands.onCommandExecuted(({ id, params }) => {
    if (id !== SetDefinedNameMutation.id && id !== RemoveDefinedNameMutation.id) return;
    changed.add((params as ISetDefinedNameMutationParam).unitId);
  });
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationStartMutation.id || changed.size === 0) return;
    injector.get(IFunctionService).deleteFormulaAstCacheKey(EVERY_FORMULA);
    // Empties what it keeps; it builds again as before.
    injector.get(LexerTreeBuilder).dispose();
    Object.assign(params as IFormulaDirtyData, {
      forceCalculation: true,
      clearDependencyTreeCache: Object.fromEntries(
        [...changed].map((unit) => [unit, Object.fromEntries(sheetsOf(unit))]),
      ),
    });
    changed.clear();
  });
}
