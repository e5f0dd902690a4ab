import type { Unit } from '../../../../src/core/units.js';
import type { Note, Point } from '../picture.js';
import type { Speech } from '../speech.js';

export const paired = (x: readonly number[], y: readonly number[]): readonly Point[] =>
  x.map((one, row) => ({ x: one, y: y[row] as number }));

/** A remark of the library's on the data. */
export const remark = ({ label }: { readonly label: string }, text: string): Note => ({
  text: `${label}: ${text}.`,
  english: true,
});

export const quality = ({ words, count }: Speech, rSquared: number | undefined): readonly string[] =>
  rSquared === undefined ? [] : [words.fit.quality(count(Number(rSquared.toPrecision(5))))];

export const difference = ({ words }: Speech, unit: Unit) => ({ label: words.residual, unit });
