import { a1, columnLetters } from './a1.js';
import type { Reference } from './reference.js';

/** A place as a person reads it; the sheet stands before it only where it is another than `here`. */
export function placeText(reference: Reference, here: string): string {
  if (reference.kind === 'table') return reference.table + (reference.column ? `[${reference.column}]` : '');
  const sheet = reference.sheet === here ? '' : `${reference.sheet} · `;
  if (reference.kind === 'name') return reference.name;
  if (reference.kind === 'spill') return `${sheet}${a1(reference.row, reference.column)}#`;
  return sheet + rangeText(reference);
}

/** The A1 address of a rectangle; of whole columns or rows, their letters or numbers. */
export function rangeText({ top, left, bottom, right }: Extract<Reference, { kind: 'range' }>): string {
  if (bottom === null && right === null) return a1(top, left);
  if (bottom === null) return `${columnLetters(left)}:${columnLetters(right ?? left)}`;
  if (right === null) return `${top + 1}:${bottom + 1}`;
  return top === bottom && left === right ? a1(top, left) : `${a1(top, left)}:${a1(bottom, right)}`;
}

export const cellReference = (sheet: string, row: number, column: number): Extract<Reference, { kind: 'range' }> => ({
  kind: 'range',
  sheet,
  top: row,
  left: column,
  bottom: row,
  right: column,
});
