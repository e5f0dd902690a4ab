import { figureWeights } from './spread.js';
import { dot, spreadOf } from './sums.js';

/** A column whose own part is a smaller share of it than one in so many is told apart from the others by rounding alone. */
const TOLD_APART = 1e8;

const norm = (values: Float64Array): number => Math.sqrt(dot(values, values));

/** A linear fit of y on several columns, with what its errors need. */
export interface Plane {
  readonly coefficients: readonly number[];
  readonly freedom: number;
  /** Residual standard deviation; undefined where no freedom is left. */
  readonly deviation: number | undefined;
  readonly rSquared: number | undefined;
  /** Standard error of a combination of the coefficients over the residual standard deviation. */
  scale(gradient: readonly number[]): number;
}

/**
 * Least squares on columns, by their orthogonal axes.
 * @returns undefined where the columns cannot be told apart.
 */
export function fitPlane(columns: readonly Float64Array[], y: Float64Array): Plane | undefined {
  const weigh = figureWeights(columns);
  const unit = (index: number) => columns.map((_, column) => (column === index ? 1 : 0));
  const weights = columns.map((_, index) => weigh(unit(index)));
  if (weights.some((one, index) => !(norm(one) * norm(columns[index] as Float64Array) < TOLD_APART))) return undefined;
  const coefficients = weights.map((one) => dot(one, y));
  const residuals = y.map((one, row) =>
    coefficients.reduce((left, coefficient, column) => left - coefficient * (columns[column]?.[row] as number), one),
  );
  const freedom = y.length - columns.length;
  const squares = dot(residuals, residuals);
  const spread = spreadOf(y);
  return {
    coefficients,
    freedom,
    deviation: freedom > 0 ? Math.sqrt(squares / freedom) : undefined,
    rSquared: spread > 0 ? 1 - squares / spread : undefined,
    scale: (gradient) => norm(weigh(gradient)),
  };
}
