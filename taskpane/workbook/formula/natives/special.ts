import { beta, lanczos, logGamma } from '../../../../src/numerics/beta.js';

/** The gamma function. */
export function gamma(x: number): number {
  if (Number.isInteger(x) && x > 0 && x < 171) {
    let product = 1;
    for (let n = 2; n < x; n += 1) product *= n;
    return product;
  }
  if (x < 0.5) return Math.PI / (Math.sin(Math.PI * x) * gamma(1 - x));
  const { t, sum } = lanczos(x);
  // The power in two halves, so that it does not grow too large before it is made smaller.
  const half = t ** ((x - 0.5) / 2);
  return Math.sqrt(2 * Math.PI) * half * Math.exp(-t) * half * sum;
}

/** The share of Student's distribution above t: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.1. */
export function studentAbove(t: number, freedom: number): number {
  const whole = freedom + t * t;
  const tail = beta(freedom / 2, 0.5, freedom / whole, (t * t) / whole) / 2;
  return t >= 0 ? tail : 1 - tail;
}

export function studentDensity(t: number, freedom: number): number {
  const front = Math.exp(logGamma((freedom + 1) / 2) - logGamma(freedom / 2)) / Math.sqrt(freedom * Math.PI);
  return front * (1 + (t * t) / freedom) ** (-(freedom + 1) / 2);
}

/** The share of the F distribution above x: the same, 26.6.2. */
export const ratioAbove = (x: number, above: number, below: number): number =>
  beta(below / 2, above / 2, below / (below + above * x), (above * x) / (below + above * x));

/** A mean over the circle, which comes to every digit as soon as there are points enough. */
function overCircle(points: number, of: (angle: number) => number): number {
  let sum = 0;
  for (let k = 0; k < points; k += 1) sum += of((2 * Math.PI * k) / points);
  return sum / points;
}

const pointsFor = (x: number, n: number): number => 64 + 2 * Math.ceil(Math.abs(x) + n);

/** Bessel functions of whole order n: DLMF 10.9.1 and 10.32.3. */
export const besselJ = (x: number, n: number): number =>
  overCircle(pointsFor(x, n), (angle) => Math.cos(n * angle - x * Math.sin(angle)));
export const besselI = (x: number, n: number): number =>
  overCircle(pointsFor(x, n), (angle) => Math.exp(x * Math.cos(angle)) * Math.cos(n * angle));

/** Euler's constant: DLMF 5.2.3. */
const EULER = 0.5772156649015329;

/** From here on the sums for Y take long. */
const FAR = 200;

/**
 * The Bessel function of the second kind, for whole orders and x above 0: Abramowitz and Stegun, Handbook of Mathematical
 * Functions, 9.1.88 and 9.1.27; nothing where that takes long.
 */
export function besselY(x: number, n: number): number | undefined {
  if (x > FAR || n > FAR) return undefined;
  const front = Math.log(x / 2) + EULER;
  let before = front * besselJ(x, 0);
  let last = (front - 1) * besselJ(x, 1) - besselJ(x, 0) / x;
  for (let k = 1; 2 * k < x + 12 * Math.cbrt(x) + 40; k += 1) {
    const sign = k % 2 === 0 ? 1 : -1;
    before -= (2 * sign * besselJ(x, 2 * k)) / k;
    last -= (sign * (2 * k + 1) * besselJ(x, 2 * k + 1)) / (k * (k + 1));
  }
  if (n === 0) last = before;
  for (let k = 1; k < n; k += 1) [before, last] = [last, ((2 * k) / x) * last - before];
  return (2 / Math.PI) * last;
}
