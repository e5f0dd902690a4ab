import type { WorksheetFunction } from '../../../functions/bind.js';
import type { FunctionMetadata } from '../../../functions/metadata.js';
import { BaseFunction, type BaseValueObject } from '../engine/formula.js';
import { CellError } from './cellError.js';
import { NAME_START } from './description.js';
import type { Messages } from './messages.js';
import { fromMatrix, type Matrix, toMatrix } from './values.js';

type FunctionClass = new (name: string) => BaseFunction;

function call(
  { id, parameters }: FunctionMetadata,
  bound: WorksheetFunction,
  given: readonly BaseValueObject[],
): Matrix {
  if (given.length > parameters.length) {
    const message = `${NAME_START}${id} takes ${parameters.length} inputs at most; ${given.length} are given.`;
    return [[new CellError('#VALUE!', message)]];
  }
  const result = bound(...parameters.map((_, place) => (given[place] ? toMatrix(given[place]) : null)));
  return Array.isArray(result) ? result : [[result]];
}

/** The engine stops calculating for good when a function throws, so nothing may leave `calculate`. */
function functionClass(metadata: FunctionMetadata, bound: WorksheetFunction, messages: Messages): FunctionClass {
  return class extends BaseFunction {
    override calculate(...given: BaseValueObject[]) {
      let result: Matrix;
      try {
        result = call(metadata, bound, given);
      } catch (cause) {
        result = [[new CellError('#VALUE!', `The calculation broke off: ${String(cause)}`)]];
      }
      const place = { sheetId: this.subUnitId ?? '', row: this.row, column: this.column };
      messages.report(place, String(this.name), result);
      return fromMatrix(result);
    }
  };
}

/** Every bound function as the engine's configuration wants it: a class and the name typed in cells. */
export function gridFunctions(
  functions: readonly FunctionMetadata[],
  bound: ReadonlyMap<string, WorksheetFunction>,
  messages: Messages,
): [FunctionClass, string][] {
  return functions.flatMap((metadata) => {
    const own = bound.get(metadata.id);
    return own ? [[functionClass(metadata, own, messages), NAME_START + metadata.id] as [FunctionClass, string]] : [];
  });
}
