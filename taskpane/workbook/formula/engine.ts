import type { WorksheetFunction } from '../../../functions/bind.js';
import type { FunctionMetadata } from '../../../functions/metadata.js';
import { ICommandService, type Univer } from '../engine/core.js';
import { SetFormulaCalculationStartMutation, UniverFormulaEnginePlugin } from '../engine/formula.js';
import { mendCellValues } from '../engine/mends/cellValues.js';
import { markCircles } from '../engine/mends/circles.js';
import { mendFormulaReader } from '../engine/mends/formulaReader.js';
import { calculateAnewWhereNamesChange } from '../engine/mends/renamed.js';
import { calculateUntilSettled } from '../engine/mends/untilSettled.js';
import { recalculateWhatReadsTheVanished } from '../engine/mends/vanished.js';
import { servicesOf } from '../engine/services.js';
import { UniverSheetsPlugin } from '../engine/sheets.js';
import { CalculationMode, UniverSheetsFormulaPlugin } from '../engine/sheetsFormula.js';
import { UniverSheetsNumfmtPlugin } from '../engine/sheetsNumfmt.js';
import { descriptions } from './description.js';
import { gridFunctions } from './functions.js';
import { Messages } from './messages.js';
import { correctedFunctions } from './natives/corrected.js';

export interface Functions {
  readonly metadata: readonly FunctionMetadata[];
  readonly bound: ReadonlyMap<string, WorksheetFunction>;
}

/** The engine keeps no way back from deleting or copying a large sheet, unless none is large. */
const UNDONE = { largeSheetOperation: { largeSheetCellCountThreshold: Number.POSITIVE_INFINITY } };

/** The engine's own functions, those of them that we correct, and ours. */
function registerFunctions(univer: Univer, { metadata, bound }: Functions, messages: Messages, executes: boolean) {
  mendCellValues();
  univer.registerPlugin(UniverFormulaEnginePlugin, {
    function: [...correctedFunctions(), ...gridFunctions(metadata, bound, messages)],
    notExecuteFormula: !executes,
  });
}

/** What a workbook knows of its formulas apart from calculating them. */
function registerFormulas(univer: Univer, { metadata }: Functions) {
  univer.registerPlugin(UniverSheetsNumfmtPlugin, { disableTextFormatAlert: true, disableTextFormatMark: true });
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    description: descriptions(metadata),
    initialFormulaComputing: CalculationMode.FORCED,
  });
}

/** What goes with each calculation, wherever it runs. */
function accompanyCalculation(univer: Univer, messages: Messages) {
  servicesOf(univer)
    .get(ICommandService)
    .beforeCommandExecuted(({ id }) => {
      if (id === SetFormulaCalculationStartMutation.id) messages.newRound();
    });
  calculateUntilSettled(univer);
  recalculateWhatReadsTheVanished(univer);
  calculateAnewWhereNamesChange(univer);
  markCircles(univer);
  mendFormulaReader(univer);
}

/** The parts of the engine that hold a workbook and calculate it; they need no browser. */
export function registerCalculation(univer: Univer, functions: Functions): Messages {
  const messages = new Messages();
  registerFunctions(univer, functions, messages, true);
  univer.registerPlugin(UniverSheetsPlugin, UNDONE);
  registerFormulas(univer, functions);
  accompanyCalculation(univer, messages);
  return messages;
}

/** The parts that only calculate, a workbook that another thread holds. */
export function registerCalculating(univer: Univer, functions: Functions): Messages {
  const messages = new Messages();
  registerFunctions(univer, functions, messages, true);
  univer.registerPlugin(UniverSheetsPlugin, { onlyRegisterFormulaRelatedMutations: true });
  accompanyCalculation(univer, messages);
  return messages;
}

/** The parts that hold a workbook and leave it to another thread to calculate. */
export function registerHolding(univer: Univer, functions: Functions, messages: Messages): void {
  registerFunctions(univer, functions, messages, false);
  univer.registerPlugin(UniverSheetsPlugin, { notExecuteFormula: true, ...UNDONE });
  registerFormulas(univer, functions);
}
