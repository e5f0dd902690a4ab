/** Coefficients of Lanczos’ series for g = 7, nine terms. */
const LANCZOS = [
  0.999_999_999_999_809_93, 676.520_368_121_885_1, -1259.139_216_722_402_8, 771.323_428_777_653_13,
  -176.615_029_162_140_59, 12.507_343_278_686_905, -0.138_571_095_265_720_12, 9.984_369_578_019_571_6e-6,
  1.505_632_735_149_311_6e-7,
] as const;

/** ln Γ(x) for x ≥ ½. */
function logGamma(x: number): number {
  const sum = LANCZOS.reduce((whole, term, index) => whole + (index === 0 ? term : term / (x - 1 + index)), 0);
  const t = x + 6.5;
  return Math.log(2 * Math.PI) / 2 + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

const TINY = 1e-300;
const LEAST_STEP = 1e-16;
const MOST_STEPS = 10_000;

/** The continued fraction of the incomplete beta function, by Lentz’s way. */
function betaFraction(a: number, b: number, x: number): number {
  const away = (value: number) => (Math.abs(value) < TINY ? TINY : value);
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m < MOST_STEPS; m++) {
    for (const term of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      d = 1 / away(1 + term * d);
      c = away(1 + term / c);
      fraction *= c * d;
    }
    if (Math.abs(c * d - 1) < LEAST_STEP) break;
  }
  return fraction;
}

/** The regularised incomplete beta function. `y` is 1 − x, given apart so that no digits are lost. */
function beta(a: number, b: number, x: number, y: number): number {
  if (x <= 0) return 0;
  if (y <= 0) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(y));
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(a, b, x)) / a : 1 - (front * betaFraction(b, a, y)) / b;
}

/** Beyond so many degrees of freedom a normal distribution serves to nine digits; the fraction would take long. */
const NORMAL = 1e9;

/** Chance that Student’s t lies further from 0 than this, on both sides together. */
export function studentTails(t: number, freedom: number): number {
  const squared = t * t;
  const f = Math.min(freedom, NORMAL);
  if (!(squared < Number.POSITIVE_INFINITY)) return 0;
  return beta(f / 2, 0.5, f / (f + squared), squared / (f + squared));
}

/** What lies beyond a place to either side falls as the place moves out: where it has fallen to a share. */
export function tailQuantile(tails: (t: number) => number, share: number): number {
  let most = 1;
  while (tails(most) > share && most < 1e12) most *= 2;
  let least = 0;
  for (;;) {
    const middle = least + (most - least) / 2;
    if (middle === least || middle === most || most - least < 1e-13 * most) return middle;
    if (tails(middle) > share) least = middle;
    else most = middle;
  }
}

/** How many standard errors to either side hold the truth in this share of cases: Student’s t, both sides. */
export const studentQuantile = (share: number, freedom: number): number =>
  tailQuantile((t) => studentTails(t, freedom), 1 - share);
