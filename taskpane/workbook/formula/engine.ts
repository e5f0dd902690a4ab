import { ICommandService, type Univer } from '@univerjs/core';
import { SetFormulaCalculationStartMutation, UniverFormulaEnginePlugin } from '@univerjs/engine-formula';
import { UniverSheetsPlugin } from '@univerjs/sheets';
import { CalculationMode, UniverSheetsFormulaPlugin } from '@univerjs/sheets-formula';
import { UniverSheetsNumfmtPlugin } from '@univerjs/sheets-numfmt';
import type { WorksheetFunction } from '../../../functions/bind.js';
import type { FunctionMetadata } from '../../../functions/metadata.js';
import { descriptions } from './description.js';
import { gridFunctions } from './functions.js';
import { Messages } from './messages.js';
import { recalculateWhatReadsTheVanished } from './vanished.js';

export interface Functions {
  readonly metadata: readonly FunctionMetadata[];
  readonly bound: ReadonlyMap<string, WorksheetFunction>;
}

/** The parts of the engine that calculate; they need no browser. */
export function registerCalculation(univer: Univer, { metadata, bound }: Functions): Messages {
  const messages = new Messages();
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: gridFunctions(metadata, bound, messages) });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsNumfmtPlugin, { disableTextFormatAlert: true, disableTextFormatMark: true });
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    description: descriptions(metadata),
    initialFormulaComputing: CalculationMode.FORCED,
  });
  univer
    .__getInjector()
    .get(ICommandService)
    .beforeCommandExecuted(({ id }) => {
      if (id === SetFormulaCalculationStartMutation.id) messages.newRound();
    });
  recalculateWhatReadsTheVanished(univer);
  return messages;
}
