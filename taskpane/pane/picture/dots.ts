import type { SeriesSet } from './picture.js';

/** What is drawn at each point: a line of no length, which shows as its round or square end, a triangle, a cross. */
const SHAPES = ['h0', 'h0', 'm0,-4l4,7h-8z', 'm-3,-3l6,6m0,-6l-6,6'] as const;

const rounded = (value: number): string => String(Math.round(value * 100) / 100);

export const placeText = (x: number, y: number): string => `${rounded(x)},${rounded(y)}`;

/** One path however many points there are. */
export const dotsAt = (points: readonly (readonly [x: number, y: number])[], set: SeriesSet = 0): string =>
  points.map(([x, y]) => `M${placeText(x, y)}${SHAPES[set]}`).join('');
