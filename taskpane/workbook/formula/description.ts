import { type FunctionMetadata, NAMESPACE } from '../../../functions/metadata.js';
import { FunctionType, type IFunctionInfo } from '../engine/formula.js';

/** What stands before each id in a cell. */
export const NAME_START = `${NAMESPACE}.`;

/** The argument hints shown while a formula is typed. */
export function descriptions(functions: readonly FunctionMetadata[]): IFunctionInfo[] {
  return functions.map(({ id, description, parameters }) => ({
    functionName: NAME_START + id,
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: parameters.map(({ name, description: detail, optional }) => ({
      name,
      detail,
      // The engine shows these in a row as its example of a call.
      example: name,
      require: optional ? 0 : 1,
      repeat: 0,
    })),
  }));
}
