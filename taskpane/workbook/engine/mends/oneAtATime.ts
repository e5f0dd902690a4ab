import type { Injector } from '../core.js';
import { FormulaDataModel, ICalculateFormulaService } from '../formula.js';

type Config = Parameters<ICalculateFormulaService['execute']>[0];

/**
 * The engine takes a second calculation's data in the middle of the first where both are asked for within a moment,
 * and then loses answers of both. Here the second waits until the first is through, and takes what it then finds.
 */
export function oneAtATime(injector: Injector): void {
  const calculation = injector.get(ICalculateFormulaService);
  const model = injector.get(FormulaDataModel);
  const execute = calculation.execute.bind(calculation);
  const waiting: Config[] = [];
  let busy = false;

  const run = (config: Config) => {
    busy = true;
    return execute({
      ...config,
      formulaData: model.getFormulaData(),
      arrayFormulaCellData: model.getArrayFormulaCellData(),
      arrayFormulaRange: model.getArrayFormulaRange(),
    });
  };
  calculation.executionCompleteListener$.subscribe(() =>
    // The engine has not put everything away yet when it tells of the end.
    setTimeout(() => {
      busy = false;
      const next = waiting.shift();
      if (next) void run(next);
    }),
  );
  calculation.execute = async (config) => {
    if (busy) waiting.push(config);
    else await run(config);
  };
}
