import { ICommandService, type IRange, type IUnitRange, type Univer } from '../core.js';
import {
  FormulaDataModel,
  SetArrayFormulaDataMutation,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
} from '../formula.js';
import { servicesOf } from '../services.js';

type Fills = ReadonlyMap<string, IUnitRange>;

/** How far each answer of several cells reaches, by the place of its formula. */
function fillsOf(model: FormulaDataModel): Fills {
  const fills = new Map<string, IUnitRange>();
  for (const [unitId, sheets] of Object.entries(model.getArrayFormulaRange())) {
    for (const [sheetId, rows] of Object.entries(sheets ?? {})) {
      for (const [row, columns] of Object.entries((rows ?? {}) as Record<string, Record<string, IRange>>)) {
        for (const [column, range] of Object.entries(columns))
          if (range) fills.set([unitId, sheetId, row, column].join(' '), { unitId, sheetId, range });
      }
    }
  }
  return fills;
}

const holds = (outer: IRange, inner: IRange): boolean =>
  outer.endRow >= inner.endRow && outer.endColumn >= inner.endColumn;

/**
 * The engine leaves formulas alone that read what an answer no longer fills: they would go on showing it. Here they
 * are calculated once more as soon as an answer has become smaller.
 */
export function recalculateWhatReadsTheVanished(univer: Univer): void {
  const injector = servicesOf(univer);
  const commands = injector.get(ICommandService);
  let before: Fills = new Map();
  let vanished: IUnitRange[] = [];
  commands.onCommandExecuted(({ id }) => {
    if (id === SetArrayFormulaDataMutation.id) {
      const now = fillsOf(injector.get(FormulaDataModel));
      for (const [place, fill] of before) {
        const left = now.get(place);
        if (!left || !holds(left.range, fill.range)) vanished.push(fill);
      }
      before = now;
    }
    if (id !== SetFormulaCalculationResultMutation.id || vanished.length === 0) return;
    const dirtyRanges = vanished;
    vanished = [];
    commands.executeCommand(SetFormulaCalculationStartMutation.id, { dirtyRanges, options: null }, { onlyLocal: true });
  });
}
