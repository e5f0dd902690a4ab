import { type Injector, IUniverInstanceService, type Workbook } from '../engine/core.js';
import {
  type ArrayValueObject,
  BaseReferenceObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  IFormulaRuntimeService,
  Interpreter,
} from '../engine/formula.js';
import type { Place } from './signals.js';

/** Cells that one range may have: more take longer than anyone waits, and more room than a page is given. */
const MOST_READ = 3_000_000;
/** Cells that one answer may fill: each of them goes to the page. */
const MOST_FILLED = 300_000;

class TooLarge extends Error {}

function check(range: BaseReferenceObject) {
  const { startRow, endRow, startColumn, endColumn } = range.getRangePosition();
  if ((endRow - startRow + 1) * (endColumn - startColumn + 1) > MOST_READ) throw new TooLarge();
}

/** Ranges refuse before they are gone through, whichever function asks. */
function boundRanges() {
  const { prototype } = BaseReferenceObject;
  const { toArrayValueObject, iterator } = prototype;
  prototype.toArrayValueObject = function (useCache) {
    check(this);
    return toArrayValueObject.call(this, useCache);
  };
  prototype.iterator = function (callback) {
    check(this);
    return iterator.call(this, callback);
  };
}

const isVast = (value: BaseValueObject) =>
  value.isArray() &&
  (value as ArrayValueObject).getRowCount() * (value as ArrayValueObject).getColumnCount() > MOST_FILLED;

/**
 * Whatever asks for too many cells is told of, and keeps the answer that it had; nothing that is thrown leaves a formula,
 * or it would be the end of all calculation.
 */
export function budget(injector: Injector, tooLarge: (place: Place) => void): void {
  boundRanges();
  const interpreter = injector.get(Interpreter);
  const runtime = injector.get(IFormulaRuntimeService);
  const workbooks = injector.get(IUniverInstanceService);
  const interpret = interpreter.execute.bind(interpreter);
  const setRuntimeData = runtime.setRuntimeData.bind(runtime);
  let refused = false;

  interpreter.execute = (node) => {
    refused = false;
    try {
      return interpret(node);
    } catch (cause) {
      refused = cause instanceof TooLarge;
      return ErrorValueObject.create(ErrorType.CALC);
    }
  };
  /** Whether an answer was set. One that is a range is gone through only here. */
  const set = (value: Parameters<typeof setRuntimeData>[0]) => {
    try {
      setRuntimeData(value);
      return true;
    } catch (cause) {
      if (cause instanceof TooLarge) return false;
      throw cause;
    }
  };
  runtime.setRuntimeData = (value) => {
    if (!refused && !isVast(value as BaseValueObject) && set(value)) return;
    refused = false;
    const { currentRow: row, currentColumn: column, currentSubUnitId: sheet, currentUnitId: unit } = runtime;
    tooLarge([sheet, row, column]);
    const { v } = workbooks.getUnit<Workbook>(unit)?.getSheetBySheetId(sheet)?.getCellRaw(row, column) ?? {};
    if (v === undefined || v === null || v === '') setRuntimeData(ErrorValueObject.create(ErrorType.CALC));
  };
}
