import { type AstExpression, type CallExpression, parse, tokenize } from '@borgar/fx';
import { idOf } from './ids.js';
import { separatedByCommas } from './separators.js';

/** One of our functions in a formula. */
export interface Call {
  /** Without the namespace. */
  readonly id: string;
  readonly node: CallExpression;
  /** Inside LET or LAMBDA, where a word may stand for a value of the formula's own. */
  readonly local: boolean;
  /** Calls of our functions among its arguments. */
  readonly calls: readonly Call[];
}

export interface Formula {
  /** Ids of our functions in the order in which they stand, each once; told of an unfinished formula too. */
  readonly ids: readonly string[];
  /** The outermost calls in their order; empty where the text is no whole formula. */
  readonly calls: readonly Call[];
}

function callsIn(node: AstExpression | null, local: boolean): readonly Call[] {
  switch (node?.type) {
    case 'CallExpression': {
      const calls = node.arguments.flatMap((one) => callsIn(one, local));
      const id = idOf(node.callee.name);
      return id === undefined ? calls : [{ id, node, local, calls }];
    }
    case 'UnaryExpression':
    case 'BinaryExpression':
      return node.arguments.flatMap((one) => callsIn(one, local));
    case 'ArrayExpression':
      return node.elements.flat().flatMap((one) => callsIn(one, local));
    case 'LetExpression':
      return [...node.declarations.map(({ init }) => init), node.body].flatMap((one) => callsIn(one, true));
    case 'LambdaExpression':
      return callsIn(node.body, true);
    default:
      return [];
  }
}

/** Reads a formula as it stands in a cell. Text that is no formula, or not yet one, has no calls. */
export function readFormula(text: string): Formula {
  const tokens = separatedByCommas(tokenize(text));
  const ids = tokens.flatMap(({ type, value }) => (type === 'func' ? (idOf(value) ?? []) : []));
  const formula = (calls: readonly Call[]) => ({ ids: [...new Set(ids)], calls });
  if (ids.length === 0) return formula([]);
  try {
    return formula(callsIn(parse(tokens), false));
  } catch {
    // The parser has no other way to say that the text is unfinished.
    return formula([]);
  }
}
