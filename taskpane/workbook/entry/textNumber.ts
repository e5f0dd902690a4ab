import { notationOfBlock } from './blockMark.js';
import { readFigure } from './figure.js';
import type { NumberEntry } from './number.js';
import type { Writing } from './writing.js';

type Figure = Extract<NumberEntry, { kind: 'number' }>;

const LONGEST = 60;
const BEGINS = /^[\s(+\-−€$£]*[\d.,]/;
/** Batches, orders and parcels: their noughts in front would be lost, and 12E5 is no power of ten there. */
const NAME = /^(?:0\d+|\d+E\d+)$/i;
/** Whether a text is made of digits and yet no number. */
export const isName = (text: string): boolean => NAME.test(text.trim());
/** A day without its year may as well be a fraction or a number of a list. */
const NO_YEAR = /^\d{1,2}(?:\/\d{1,2}|\.\s?\d{1,2}\.)$/;

/** The number, date or sum of money that stands as text, read as `writing` has it. */
export function numberInText(text: string, writing: Writing): Figure | undefined {
  const plain = text.trim();
  if (plain.length > LONGEST || !BEGINS.test(plain) || NAME.test(plain) || NO_YEAR.test(plain)) return undefined;
  const entry = readFigure(plain, writing);
  return entry.kind === 'number' ? entry : undefined;
}

/** Whether a text looks like a number, by the marks that it has itself. */
export function looksLikeNumber(text: string, writing: Writing): boolean {
  if (text.length > LONGEST || !BEGINS.test(text)) return false;
  return numberInText(text, { ...writing, notation: notationOfBlock([text], writing.notation).notation }) !== undefined;
}
