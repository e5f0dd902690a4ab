import type { AstExpression } from '@borgar/fx';
import { type Parameter, parametersOf } from '../../functions/parameters.js';
import type { Calculation } from '../../src/core/calculation.js';
import type { Reference } from '../host/reference.js';
import type { Matrix } from './arithmetic.js';
import type { Evaluator } from './evaluate.js';
import type { Call } from './readFormula.js';
import { asReference } from './references.js';
import { Unknown } from './unknown.js';

/** One input of a call: what stands for it in the formula, and what it receives. */
export interface Given {
  readonly parameter: Parameter;
  /** Undefined or null where the formula leaves it out. */
  readonly node: AstExpression | null | undefined;
  readonly reference?: Reference;
  readonly value: Matrix | null | Unknown;
}

/** Every input of a call in its order, those left out included. */
export function givenTo(
  { node, local }: Call,
  { inputs }: Pick<Calculation, 'inputs'>,
  evaluator: Evaluator,
  sheet: string,
): readonly Given[] {
  return parametersOf(inputs).map((parameter, index): Given => {
    const argument = node.arguments[index];
    // A word may be the formula's own there, and would be taken for a name of the workbook.
    if (local && argument) return { parameter, node: argument, value: new Unknown('function', 'LET') };
    const reference = asReference(argument ?? null, sheet);
    return {
      parameter,
      node: argument,
      ...(reference && !(reference instanceof Unknown) ? { reference } : {}),
      value: evaluator.value(argument ?? null),
    };
  });
}
