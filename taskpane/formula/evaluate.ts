import { type ArrayExpression, type AstExpression, type CallExpression, isError, tokenize } from '@borgar/fx';
import { bindAll } from '../../functions/bind.js';
import type { Cells } from '../host/host.js';
import type { Reference } from '../host/reference.js';
import { answers, CellError } from '../workbook/formula/cellError.js';
import { arithmetic, type Matrix, percent, type Scalar } from './arithmetic.js';
import { idOf } from './ids.js';
import { asReference, textOf } from './references.js';
import { Unknown } from './unknown.js';

/** What stands in the workbook, read beforehand. */
export type Read = (reference: Reference) => Cells | undefined;

const bound = bindAll(answers);

/** Whether a text is one of the worksheet's errors, such as `#N/A`. */
export const isErrorCode = (text: string): boolean => text.startsWith('#') && isError(tokenize(text)[0]);

/** Error cells come from a host as their codes. */
const fromCells = (cells: Cells): Matrix =>
  cells.map((row) => row.map((one) => (typeof one === 'string' && isErrorCode(one) ? new CellError(one, '') : one)));

export class Evaluator {
  constructor(
    /** The sheet on which the formula stands. */
    private readonly sheet: string,
    private readonly read: Read,
  ) {}

  /** The values of a part of a formula, or what in it only the workbook knows. A place left empty is null. */
  value(node: AstExpression | null): Matrix | null | Unknown {
    if (node === null) return null;
    const reference = asReference(node, this.sheet);
    if (reference instanceof Unknown) return reference;
    if (reference) {
      const cells = this.read(reference);
      return cells ? fromCells(cells) : new Unknown('missing', textOf(node));
    }
    switch (node.type) {
      case 'Literal':
        return [[node.value]];
      case 'ErrorLiteral':
        return [[new CellError(node.value, '')]];
      case 'ArrayExpression':
        return this.array(node);
      case 'CallExpression':
        return this.call(node);
      case 'UnaryExpression':
      case 'BinaryExpression':
        return this.operation(node.operator, node.arguments);
      default:
        return new Unknown('function', node.type === 'LetExpression' ? 'LET' : 'LAMBDA');
    }
  }

  /** The arguments of one of our functions. */
  inputs({ arguments: given }: CallExpression): readonly (Matrix | null)[] | Unknown {
    const values: (Matrix | null)[] = [];
    for (const one of given) {
      const value = this.value(one);
      if (value instanceof Unknown) return value;
      values.push(value);
    }
    return values;
  }

  private call(node: CallExpression): Matrix | Unknown {
    const own = bound.get(idOf(node.callee.name) ?? '');
    if (!own) return new Unknown('function', node.callee.name);
    const inputs = this.inputs(node);
    if (inputs instanceof Unknown) return inputs;
    const result = own(...inputs);
    return Array.isArray(result) ? (result as Matrix) : [[result as Scalar]];
  }

  private array({ elements }: ArrayExpression): Matrix | Unknown {
    const rows: Scalar[][] = [];
    for (const line of elements) {
      const row: Scalar[] = [];
      for (const one of line) {
        const value = this.value(one);
        if (value instanceof Unknown) return value;
        row.push(value?.[0]?.[0] ?? null);
      }
      rows.push(row);
    }
    return rows;
  }

  private operation(operator: string, operands: readonly AstExpression[]): Matrix | Unknown {
    const values: Matrix[] = [];
    for (const one of operands) {
      const value = this.value(one);
      if (value instanceof Unknown) return value;
      values.push(value ?? [[null]]);
    }
    const [first = [[null]], second] = values;
    if (operator === '%') return percent(first);
    // One cell is itself; where "@" chooses from several, the choice depends on where the formula stands.
    if (operator === '@') return first.length * (first[0]?.length ?? 0) === 1 ? first : new Unknown('operator', '@');
    return second ? arithmetic(operator, first, second) : arithmetic(operator, [[0]], first);
  }
}
