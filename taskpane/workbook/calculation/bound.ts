import type { Univer } from '../engine/core.js';
import { ICalculateFormulaService, IFormulaRuntimeService, IOtherFormulaManagerService } from '../engine/formula.js';
import { beforeFirstCalculation } from '../engine/mends/firstCalculation.js';
import { oneAtATime } from '../engine/mends/oneAtATime.js';
import { servicesOf } from '../engine/services.js';
import { budget } from './budget.js';
import type { Place, Rests } from './signals.js';
import type { Telling } from './telling.js';

type Sheets = Readonly<Record<string, unknown>>;
type Units = Readonly<Record<string, Sheets | undefined>>;
type Rows = Readonly<Record<number, Readonly<Record<number, unknown>>>>;

/** Units of sheets with some sheets changed; the rest is not copied. */
function changed<T extends object>(units: T, sheet: string, change: (sheet: unknown) => unknown): T {
  return Object.fromEntries(
    Object.entries(units as Units).map(([unit, sheets]) => [
      unit,
      sheets && sheet in sheets ? { ...sheets, [sheet]: change(sheets[sheet]) } : sheets,
    ]),
  ) as T;
}

const withoutCell = (row: number, column: number) => (sheet: unknown) => {
  const rows = (sheet ?? {}) as Rows;
  const { [column]: _, ...left } = rows[row] ?? {};
  return { ...rows, [row]: left };
};

interface Signals {
  readonly telling: Telling;
  tooLarge(place: Place): void;
}

/**
 * Lets the page know which formula is calculated, and leaves those alone that were found not to come to an end: also
 * while the engine looks for what depends on what, since it calculates addresses for that.
 */
export function bound(univer: Univer, { telling, tooLarge }: Signals): (given: Rests) => void {
  const injector = servicesOf(univer);
  let rests: readonly Place[] = [];

  const hold = () => {
    const runtime = injector.get(IFormulaRuntimeService);
    const setCurrent = runtime.setCurrent.bind(runtime);
    runtime.setCurrent = (row, column, rows, columns, sheet, unit) => {
      telling.at([sheet, row, column]);
      setCurrent(row, column, rows, columns, sheet, unit);
    };
    const calculation = injector.get(ICalculateFormulaService);
    const execute = calculation.execute.bind(calculation);
    calculation.executionCompleteListener$.subscribe(() => telling.nowhere());
    calculation.execute = (config) => {
      telling.nowhere();
      const cells = rests.filter(([, row]) => row >= 0);
      const formulaData = cells.reduce(
        (left, [sheet, row, column]) => changed(left, sheet, withoutCell(row, column)),
        config.formulaData,
      );
      return execute({ ...config, formulaData });
    };
    oneAtATime(injector);
    budget(injector, tooLarge);
    const rules = injector.get(IOtherFormulaManagerService);
    const all = rules.getOtherFormulaData.bind(rules);
    rules.getOtherFormulaData = () =>
      rests.filter(([, row]) => row < 0).reduce((left, [sheet]) => changed(left, sheet, () => ({})), all());
  };

  beforeFirstCalculation(univer, hold);
  return (given) => {
    rests = given.rests;
    telling.exactly = given.exactly;
  };
}
