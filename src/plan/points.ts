import { wholeRefusal } from './whole.js';

/** How many rows a curve has. */
export const points = {
  kind: 'number',
  label: 'Points',
  unit: '',
  limit: [2, 1000],
  preset: 25,
  help: 'Rows of the curve, both ends included.',
  source: 'Limits: two points make a line, and more than 1000 are no better picture.',
} as const;

export const pointsRefusal = (given: { readonly points: number }): string | undefined =>
  wholeRefusal(points.label, given.points);

/** Evenly spaced, both ends included and met exactly. */
export const spaced = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => from + ((to - from) * index) / (count - 1));
