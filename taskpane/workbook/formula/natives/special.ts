/** Coefficients of the series after C. Lanczos (SIAM J. Numer. Anal. B 1 (1964) 86) for g = 7, as P. Godfrey calculated them; from memory. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];
const G = 7;

const series = (x: number): number => LANCZOS.reduce((sum, one, n) => sum + (n === 0 ? one : one / (x + n)), 0);

/** The gamma function. */
export function gamma(x: number): number {
  if (Number.isInteger(x) && x > 0 && x < 171) {
    let product = 1;
    for (let n = 2; n < x; n += 1) product *= n;
    return product;
  }
  if (x < 0.5) return Math.PI / (Math.sin(Math.PI * x) * gamma(1 - x));
  const t = x + G - 0.5;
  // The power in two halves, so that it does not grow too large before it is made smaller.
  const half = t ** ((x - 0.5) / 2);
  return Math.sqrt(2 * Math.PI) * half * Math.exp(-t) * half * series(x - 1);
}

/** Its logarithm, for x above 0. */
export function gammaLog(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - gammaLog(1 - x);
  const t = x + G - 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(series(x - 1));
}

const MOST_STEPS = 10_000;
const TINY = 1e-300;

/** The continued fraction of the incomplete beta function, by W. J. Lentz's way: DLMF 8.17.22 and 3.10. */
function fraction(x: number, a: number, b: number): number {
  const apart = (value: number) => (Math.abs(value) < TINY ? TINY : value);
  let c = 1;
  let d = 1 / apart(1 - ((a + b) * x) / (a + 1));
  let answer = d;
  for (let m = 1; m <= MOST_STEPS; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    let change = 1;
    for (const term of [even, odd]) {
      d = 1 / apart(1 + term * d);
      c = apart(1 + term / c);
      change = c * d;
      answer *= change;
    }
    if (Math.abs(change - 1) < 1e-16) break;
  }
  return answer;
}

/** The regularised incomplete beta function: DLMF 8.17.2. */
export function betaShare(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(gammaLog(a + b) - gammaLog(a) - gammaLog(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (front * fraction(x, a, b)) / a : 1 - (front * fraction(1 - x, b, a)) / b;
}

/** The share of Student's distribution above t: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.1. */
export function studentAbove(t: number, freedom: number): number {
  const tail = betaShare(freedom / (freedom + t * t), freedom / 2, 0.5) / 2;
  return t >= 0 ? tail : 1 - tail;
}

export function studentDensity(t: number, freedom: number): number {
  const front = Math.exp(gammaLog((freedom + 1) / 2) - gammaLog(freedom / 2)) / Math.sqrt(freedom * Math.PI);
  return front * (1 + (t * t) / freedom) ** (-(freedom + 1) / 2);
}

/** The share of the F distribution above x: the same, 26.6.2. */
export const ratioAbove = (x: number, above: number, below: number): number =>
  betaShare(below / (below + above * x), below / 2, above / 2);

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
