import { extent } from '../numerics/extent.js';
import type { Line } from '../numerics/line.js';
import { bend, without } from '../numerics/lineChecks.js';
import type { readingErrors } from '../numerics/readingErrors.js';

/** A figure is worth a remark where chance hardly explains it and it is large enough to matter. */
const SIGNIFICANT = 3;
/** Of what chance alone reaches in 95 % of cases: three standard errors of many points. */
const BEYOND = 1.5;
const LARGE = 0.02;

interface Curve {
  readonly up: string;
  readonly down: string;
}

/** Whether the points curve away from their line, and what that may mean; `errors` where neighbours may err together. */
export function shapeRemark(
  line: Line,
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  { up, down }: Curve,
  errors?: typeof readingErrors,
): string {
  const found = bend(line, x, y, errors);
  if (found === undefined) return 'too few rows to tell';
  const large = Math.abs(found.sag) > LARGE * Math.abs(line.slope) * extent(x).span;
  if (!large || !(Math.abs(found.beyond) > BEYOND)) return 'straight';
  return found.sag > 0 ? `curves upward: ${up}` : `curves downward: ${down}`;
}

/**
 * Whether the first point, by x, lies off the line through the others and pulls its start.
 * @param said a start in words, with its unit.
 */
export function firstPointRemark(
  line: Line,
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  start: string,
  said: (value: number) => string,
): string {
  let first = 0;
  for (let i = 1; i < x.length; i++) if ((x[i] as number) < (x[first] as number)) first = i;
  const left = without(line, x[first] as number, y[first] as number);
  if (left === undefined) return 'too few rows to tell';
  const pull = Math.abs(left.intercept - line.intercept);
  const large = pull > LARGE * Math.abs(line.slope) * extent(x).span;
  if (!large || !(Math.abs(left.significance) > SIGNIFICANT)) return 'in line with the others';
  const side = left.away > 0 ? 'above' : 'below';
  return `lies ${side} the line through the others and pulls the ${start}: ${said(left.intercept)} without it`;
}
