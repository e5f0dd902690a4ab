import type { SheetCondition, StarterSheet, Validation } from '../../../src/sheets/sheet.js';
import { JUDGED_LOOKS } from '../../host/judgedLooks.js';
import {
  AddConditionalRuleMutation,
  CFRuleType,
  CFSubRuleType,
  type IConditionFormattingRule,
} from '../engine/conditions.js';
import {
  BooleanNumber,
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationType,
  type ICommandService,
  type IDataValidationRule,
  type IRange,
} from '../engine/core.js';
import { deserializeRangeWithSheet } from '../engine/formula.js';

const yes = (one: boolean) => (one ? BooleanNumber.TRUE : BooleanNumber.FALSE);

export const conditionRule = ({ range, formula, look }: SheetCondition, index: number): IConditionFormattingRule => {
  const { color, fill, bold, italic } = JUDGED_LOOKS[look];
  return {
    cfId: `judged-${index}`,
    ranges: [deserializeRangeWithSheet(range).range],
    stopIfTrue: true,
    rule: {
      type: CFRuleType.highlightCell,
      subType: CFSubRuleType.formula,
      value: formula,
      style: { cl: { rgb: color }, bg: { rgb: fill }, bl: yes(bold), it: yes(italic) },
    },
  };
};

/** Flags an entry outside the rule with its sentence, and takes it: nothing that was typed is lost. */
const validationRule = (validation: Validation, ranges: IRange[], index: number): IDataValidationRule => {
  const { kind, limit, of, message } = validation;
  const shared = {
    uid: `rule-${index}`,
    ranges,
    allowBlank: true,
    errorStyle: DataValidationErrorStyle.WARNING,
    error: message,
    showErrorMessage: true,
  };
  if (kind === 'list' && of)
    return { ...shared, type: DataValidationType.LIST, formula1: of.join(','), showDropDown: true };
  const [least, most] = limit ?? [];
  const between = { operator: DataValidationOperator.BETWEEN, formula1: String(least), formula2: String(most) };
  return { ...shared, type: DataValidationType.DECIMAL, ...between };
};

interface Ruled {
  readonly rows: readonly (readonly ({ readonly validation?: Validation } | undefined)[] | undefined)[];
}

interface SharedRule {
  readonly validation: Validation;
  readonly ranges: IRange[];
  /** The last range of each column. */
  readonly lowest: Map<number, IRange>;
}

/** Cells with the same rule share one; those below each other share a range. */
export function validationsOf({ rows }: Ruled): readonly IDataValidationRule[] {
  const found = new Map<string, SharedRule>();
  for (const [row, cells] of rows.entries()) {
    for (const [column, cell] of (cells ?? []).entries()) {
      const validation = cell?.validation;
      if (!validation) continue;
      const key = JSON.stringify(validation);
      const one: SharedRule = found.get(key) ?? { validation, ranges: [], lowest: new Map() };
      found.set(key, one);
      const above = one.lowest.get(column);
      if (above?.endRow === row - 1) above.endRow = row;
      else {
        const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
        one.ranges.push(range);
        one.lowest.set(column, range);
      }
    }
  }
  return [...found.values()].map(({ validation, ranges }, index) => validationRule(validation, ranges, index));
}

/** Gives a sheet its rules. They belong to the sheet’s making, so there is nothing of them to undo. */
export function setRules(commands: ICommandService, unitId: string, subUnitId: string, starter: StarterSheet): void {
  for (const [index, condition] of (starter.conditions ?? []).entries()) {
    const rule = conditionRule(condition, index);
    commands.syncExecuteCommand(AddConditionalRuleMutation.id, { unitId, subUnitId, rule });
  }
  for (const rule of validationsOf(starter)) {
    commands.syncExecuteCommand('data-validation.mutation.addRule', { unitId, subUnitId, rule });
  }
}
