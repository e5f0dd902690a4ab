import { type AstExpression, parse, tokenize } from '@borgar/fx/xlsx';
import { type Rectangle, rectangleOf } from './readPlaces.js';

/** The address that a name of several cells stands for, by the name in small letters. */
export type Ranges = ReadonlyMap<string, string>;

export type Node = AstExpression;
export type Call = Extract<Node, { readonly type: 'CallExpression' }>;
export type Reference = Extract<Node, { readonly type: 'ReferenceIdentifier' }>;

/** A formula without its equals sign as a tree. Throws where it cannot be read. */
export const treeOf = (text: string): Node => parse(tokenize(text, { withLocation: true }));

/** Where a part of a formula begins and ends. */
export const spanOf = ({ loc }: Node): readonly [start: number, end: number] => [loc?.[0] ?? 0, loc?.[1] ?? 0];

/** Operators that put references together instead of calculating with what they hold. */
export const joinsReferences = (operator: string): boolean => /^[:, ]$|^\s+$/.test(operator);

/** The name of a function that is called; nothing where a function is called that has none. */
export const nameOf = ({ callee }: Call): string =>
  (callee as { readonly type: string }).type === 'Identifier' ? (callee as { readonly name: string }).name : '';

/** The cells that a reference stands for, as far as that is to be seen. */
export function areaOf({ value, kind }: Reference, ranges: Ranges): Rectangle | undefined {
  const place = value.slice(value.lastIndexOf('!') + 1);
  const range = kind === 'name' ? ranges.get(place.toLowerCase()) : place;
  return range === undefined ? undefined : rectangleOf(range);
}

/** Whether a formula only stands for cells, and calculates nothing. */
export function isReference(text: string): boolean {
  const node = treeOf(text);
  return node.type === 'ReferenceIdentifier' || (node.type === 'BinaryExpression' && joinsReferences(node.operator));
}

export const isOneCell = ({ top, left, bottom, right }: Rectangle): boolean => top === bottom && left === right;
