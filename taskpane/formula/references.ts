import {
  type AstExpression,
  type BinaryExpression,
  parseA1Ref,
  parseStructRef,
  type ReferenceIdentifier,
  type UnaryExpression,
} from '@borgar/fx';
import type { RangeReference, Reference } from '../host/reference.js';
import { Unknown } from './unknown.js';

const LAST_ROW = 1_048_575;
const LAST_COLUMN = 16_383;

/** A sheet's name by itself, without a workbook before it and without a second sheet. */
const isOneSheet = (context: readonly string[]): boolean =>
  context.length === 0 || (context.length === 1 && !context[0]?.includes(':'));

/** The range, name or table that a text of a formula names. */
export function referenceOf(text: string, sheet: string): Reference | Unknown {
  const read = parseA1Ref(text);
  const known = read && isOneSheet(read.context ?? []);
  const own = read?.context?.[0] ?? sheet;
  if (known && 'name' in read && !text.includes('[')) return { kind: 'name', sheet: own, name: read.name };
  if (!known || !('range' in read) || read.range.trim) return tableOf(text) ?? new Unknown('reference', text);
  const { top, left, bottom, right } = read.range;
  const open = (end: number | null | undefined, last: number) => (end === undefined || end === last ? null : end);
  return {
    kind: 'range',
    sheet: own,
    top: top ?? 0,
    left: left ?? 0,
    bottom: top === null ? null : open(bottom, LAST_ROW),
    right: left === null ? null : open(right, LAST_COLUMN),
  };
}

/** A whole table or one whole column of it; rows of headers and totals and "this row" are the workbook's own business. */
function tableOf(text: string): Reference | undefined {
  const read = parseStructRef(text);
  const { table, columns = [], sections = [] } = read ?? {};
  if (!table || sections.length > 0 || columns.length > 1) return undefined;
  return { kind: 'table', table, ...(columns[0] === undefined ? {} : { column: columns[0] }) };
}

const isIdentifier = (node: AstExpression | undefined): node is ReferenceIdentifier =>
  node?.type === 'ReferenceIdentifier';

/** Operators that stand behind what they work on. */
const BEHIND: readonly string[] = ['%', '#'];

/** A part of a formula as a person would recognise it. */
export const textOf = (node: AstExpression): string => {
  if (isIdentifier(node)) return node.value;
  if (node.type === 'BinaryExpression') return node.arguments.map(textOf).join(node.operator);
  if (node.type === 'UnaryExpression') {
    const operand = node.arguments.map(textOf).join('');
    return BEHIND.includes(node.operator) ? `${operand}${node.operator}` : `${node.operator}${operand}`;
  }
  return node.type === 'CallExpression' ? `${node.callee.name}()` : '…';
};

/** `A1:Sheet1!B9`, written with a sheet on one side or the other. */
function spanned({ arguments: [from, to] }: BinaryExpression, sheet: string): Reference | undefined {
  if (!isIdentifier(from) || !isIdentifier(to)) return undefined;
  const [one, other] = [referenceOf(from.value, sheet), referenceOf(to.value, sheet)];
  if (one instanceof Unknown || other instanceof Unknown || one.kind !== 'range' || other.kind !== 'range') return;
  // The second half stands on the sheet of the first unless it names one.
  const elsewhere = to.value.includes('!') && one.sheet !== other.sheet;
  return elsewhere ? undefined : union(one, other);
}

function union(one: RangeReference, other: RangeReference): RangeReference {
  const far = (a: number | null, b: number | null) => (a === null || b === null ? null : Math.max(a, b));
  return {
    ...one,
    top: Math.min(one.top, other.top),
    left: Math.min(one.left, other.left),
    bottom: far(one.bottom, other.bottom),
    right: far(one.right, other.right),
  };
}

function spill({ arguments: [at] }: UnaryExpression, sheet: string): Reference | undefined {
  const start = isIdentifier(at) ? referenceOf(at.value, sheet) : undefined;
  if (!start || start instanceof Unknown || start.kind !== 'range') return undefined;
  return { kind: 'spill', sheet: start.sheet, row: start.top, column: start.left };
}

/** The reference that a part of a formula is; undefined where it is something else. */
export function asReference(node: AstExpression | null, sheet: string): Reference | Unknown | undefined {
  if (node?.type === 'ReferenceIdentifier') return referenceOf(node.value, sheet);
  if (node?.type === 'BinaryExpression' && node.operator === ':') {
    return spanned(node, sheet) ?? new Unknown('reference', textOf(node));
  }
  if (node?.type === 'UnaryExpression' && node.operator === '#') {
    return spill(node, sheet) ?? new Unknown('reference', textOf(node));
  }
  return undefined;
}

/** Every reference in a part of a formula, to be read at once. */
export function referencesIn(node: AstExpression | null, sheet: string): readonly Reference[] {
  const own = asReference(node, sheet);
  if (own) return own instanceof Unknown ? [] : [own];
  if (node?.type === 'ArrayExpression') return node.elements.flat().flatMap((one) => referencesIn(one, sheet));
  return node && 'arguments' in node ? node.arguments.flatMap((one) => referencesIn(one, sheet)) : [];
}
