import type { Unit } from '../../../../src/core/units.js';
import { extent } from '../../../../src/numerics/extent.js';
import type { Axis, Note, Picture, Point } from '../picture.js';
import type { Speech } from '../speech.js';

/** More points than this only blacken the picture. */
const MOST_POINTS = 500;
const SMOOTH = 61;
/** What the arithmetic itself leaves of an exact fit, as a share of the values, is no residual. */
const ROUNDING = 1e-10;

interface Fit {
  readonly x: Axis;
  readonly y: Axis;
  readonly points: readonly Point[];
  /** The fitted height at a place, in the units of the axes. */
  fitted(x: number): number;
  /** A ratio where logarithms were fitted, otherwise a difference. */
  readonly residual: { readonly label: string; readonly unit: Unit; readonly ratio?: true };
  readonly plateau?: { readonly at: number; readonly text: string };
  readonly summary: readonly string[];
  readonly notes: readonly Note[];
}

/** Every so many-th point of a long log, the last one included. */
export function thinned<P>(points: readonly P[], most = MOST_POINTS): readonly P[] {
  if (points.length <= most) return points;
  return Array.from({ length: most }, (_, i) => points[Math.round((i * (points.length - 1)) / (most - 1))] as P);
}

/** Evenly spaced places between the ends, on a logarithmic axis in equal ratios. */
function places({ least, most }: { least: number; most: number }, logarithmic: boolean): readonly number[] {
  const at = (share: number) => (logarithmic ? least * (most / least) ** share : least + (most - least) * share);
  return Array.from({ length: SMOOTH }, (_, index) => at(index / (SMOOTH - 1)));
}

/** Data with their fit above, and below what the fit leaves. */
export function fitPicture(fit: Fit, { words, count }: Speech): Picture {
  const { x, y, points, residual } = fit;
  const drawn = thinned(points);
  const dust = ROUNDING * extent(points.map((one) => Math.abs(one.y))).most;
  const left = (point: Point): number => {
    const fitted = fit.fitted(point.x);
    if (Math.abs(point.y - fitted) < dust) return residual.ratio ? 1 : 0;
    return residual.ratio ? point.y / fitted : point.y - fitted;
  };
  const span = extent(points.map((one) => one.x));
  const curve = places(span, x.logarithmic === true).map((one) => ({ x: one, y: fit.fitted(one) }));
  const some = drawn.length < points.length;
  return {
    title: words.fit.title,
    summary: [...fit.summary, words.fit.residuals].join(' '),
    x,
    panels: [
      {
        y,
        height: 1,
        marks: [
          ...(fit.plateau ? [{ kind: 'level', ...fit.plateau } as const] : []),
          { kind: 'dots', points: drawn },
          { kind: 'curve', points: curve },
        ],
      },
      {
        y: { label: residual.label, unit: residual.unit },
        height: 0.45,
        marks: [
          { kind: 'level', at: residual.ratio ? 1 : 0 },
          { kind: 'dots', points: drawn.map((point) => ({ x: point.x, y: left(point) })) },
        ],
      },
    ],
    notes: [...(some ? [{ text: words.drawn(count(drawn.length), count(points.length)) }] : []), ...fit.notes],
    table: {
      columns: [
        { label: x.label, unit: x.unit },
        { label: words.measured, unit: y.unit },
        { label: words.fitted, unit: y.unit },
        { label: residual.label, unit: residual.unit },
      ],
      rows: drawn.map((point) => [point.x, point.y, fit.fitted(point.x), left(point)]),
    },
  };
}
