/** A straight line fitted by ordinary least squares, with standard errors. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
  /** Standard errors; undefined where two points leave no freedom. */
  readonly slopeError: number | undefined;
  readonly interceptError: number | undefined;
  /** Residual standard deviation; undefined likewise. */
  readonly deviation: number | undefined;
  /** Share of the spread of y that the line explains; undefined where y does not vary. */
  readonly rSquared: number | undefined;
  /** What later questions to the same fit need: the points' number and mean, and sums of squares about it. */
  readonly count: number;
  readonly meanX: number;
  readonly spreadX: number;
  readonly residual: number;
}

/**
 * Fits y = intercept + slope x. Two passes, centred on the means, so that large offsets cost no digits.
 * @returns undefined where fewer than two points or no two different x are given.
 */
export function fitLine(x: ArrayLike<number>, y: ArrayLike<number>): Line | undefined {
  const count = x.length;
  if (count < 2) return undefined;
  let sumX = 0;
  let sumY = 0;
  for (let i = 0; i < count; i++) {
    sumX += x[i] as number;
    sumY += y[i] as number;
  }
  const meanX = sumX / count;
  const meanY = sumY / count;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (let i = 0; i < count; i++) {
    const dx = (x[i] as number) - meanX;
    const dy = (y[i] as number) - meanY;
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  if (!(xx > 0)) return undefined;
  const slope = xy / xx;
  const intercept = meanY - slope * meanX;
  let residual = 0;
  for (let i = 0; i < count; i++) {
    const away = (y[i] as number) - meanY - slope * ((x[i] as number) - meanX);
    residual += away * away;
  }
  const deviation = count > 2 ? Math.sqrt(residual / (count - 2)) : undefined;
  return {
    slope,
    intercept,
    deviation,
    slopeError: deviation === undefined ? undefined : deviation / Math.sqrt(xx),
    interceptError: deviation === undefined ? undefined : deviation * Math.sqrt(1 / count + (meanX * meanX) / xx),
    rSquared: yy > 0 ? 1 - residual / yy : undefined,
    count,
    meanX,
    spreadX: xx,
    residual,
  };
}
