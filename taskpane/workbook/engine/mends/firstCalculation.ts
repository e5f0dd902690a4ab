import { ICommandService, type Univer } from '../core.js';
import { SetFormulaCalculationStartMutation } from '../formula.js';
import { servicesOf } from '../services.js';

/**
 * Does something before the first calculation: the engine's services are there with the first workbook, not before.
 * The listener stays, since the engine skips the next one where one goes while it is called.
 */
export function beforeFirstCalculation(univer: Univer, act: () => void): void {
  let done = false;
  servicesOf(univer)
    .get(ICommandService)
    .beforeCommandExecuted(({ id }) => {
      if (done || id !== SetFormulaCalculationStartMutation.id) return;
      done = true;
      act();
    });
}
