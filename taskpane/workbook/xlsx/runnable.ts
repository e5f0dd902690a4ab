import { type AstExpression, parse, type Token, tokenize } from '@borgar/fx/xlsx';
import { LIMITS } from './limits.js';
import { rectangleOf } from './readPlaces.js';

/** How deep calls stand in each other. */
function depthOf(tokens: readonly Token[]): number {
  let depth = 0;
  let deepest = 0;
  for (const { type, value } of tokens) {
    if (type !== 'operator') continue;
    if (value === '(') depth += 1;
    if (value === ')') depth -= 1;
    deepest = Math.max(deepest, depth);
  }
  return deepest;
}

const isRows = (value: string): boolean => /\d:\$?\d+$/.test(value);

/** Whether a range is larger than the grid can go through in a moment. Whole columns and rows end where the sheet does. */
function isVast({ type, value }: Token): boolean {
  if (!type.startsWith('range')) return false;
  const area = rectangleOf(value.slice(value.lastIndexOf('!') + 1));
  if (!area) return false;
  const [height, width] = [area.bottom - area.top + 1, area.right - area.left + 1];
  if (type === 'range_beam') return isRows(value) ? height * LIMITS.columns > LIMITS.range : width > LIMITS.columns;
  return width > LIMITS.columns || height * width > LIMITS.range;
}

/** Whether a part of a formula reads one of these names. */
function reads(node: unknown, names: ReadonlySet<string>): boolean {
  if (typeof node !== 'object' || node === null) return false;
  if (Array.isArray(node)) return node.some((one) => reads(one, names));
  const expression = node as AstExpression;
  if (expression.type === 'ReferenceIdentifier' && names.has(expression.value.toLowerCase())) return true;
  return Object.values(node).some((one) => reads(one, names));
}

/** Whether a name that a formula gives is explained by itself or by a later one. */
function isCircular(node: unknown): boolean {
  if (typeof node !== 'object' || node === null) return false;
  if (Array.isArray(node)) return node.some(isCircular);
  const expression = node as AstExpression;
  if (expression.type === 'LetExpression') {
    const names = expression.declarations.map(({ id }) => id.name.toLowerCase());
    const wrong = expression.declarations.some(({ init }, place) => reads(init, new Set(names.slice(place))));
    if (wrong) return true;
  }
  return Object.values(node).some(isCircular);
}

const isCallOf = (name: string) => (token: Token) => token.type === 'func' && token.value.toUpperCase() === name;

/**
 * Whether the grid's engine gets through a formula. It stops for good where its own recursion runs too deep, and a
 * page that calculates without end cannot be left by its own means.
 */
export function isRunnable(tokens: readonly Token[]): boolean {
  const operators = tokens.filter(({ type, value }) => type === 'operator' && !/^[(),;{}]$/.test(value));
  if (operators.length > LIMITS.operators || depthOf(tokens) > LIMITS.depth) return false;
  if (tokens.some(isVast) || tokens.some(isCallOf('LAMBDA'))) return false;
  if (!tokens.some(isCallOf('LET'))) return true;
  try {
    return !isCircular(parse(tokens.map((token) => ({ ...token }))));
  } catch {
    return false;
  }
}

/** The same of a formula's text. What cannot be read at all is the engine's to refuse. */
export function canRun(formula: string): boolean {
  if (formula.length > LIMITS.formula) return false;
  try {
    return isRunnable(tokenize(formula.replace(/^=/, '')));
  } catch {
    return true;
  }
}
