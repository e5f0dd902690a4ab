/** Coefficients of the series after C. Lanczos (SIAM J. Numer. Anal. B 1 (1964) 86) for g = 7, as P. Godfrey calculated them; from memory. */
const LANCZOS = [
  0.999_999_999_999_809_93, 676.520_368_121_885_1, -1259.139_216_722_402_8, 771.323_428_777_653_13,
  -176.615_029_162_140_59, 12.507_343_278_686_905, -0.138_571_095_265_720_12, 9.984_369_578_019_571_6e-6,
  1.505_632_735_149_311_6e-7,
] as const;

/** Γ(x) = √(2π) t^(x − ½) e^(−t) times `sum`, for x ≥ ½. */
export const lanczos = (x: number): { readonly t: number; readonly sum: number } => ({
  t: x + 6.5,
  sum: LANCZOS.reduce((whole, term, index) => whole + (index === 0 ? term : term / (x - 1 + index)), 0),
});

/** ln Γ(x), for x above 0. */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const { t, sum } = lanczos(x);
  return Math.log(2 * Math.PI) / 2 + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

const TINY = 1e-300;
const LEAST_STEP = 1e-16;
const MOST_STEPS = 10_000;

const away = (value: number): number => (Math.abs(value) < TINY ? TINY : value);

/** The continued fraction of the incomplete beta function, by W. J. Lentz’s way: DLMF 8.17.22 and 3.10. */
function betaFraction(a: number, b: number, x: number): number {
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m < MOST_STEPS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    fraction *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    fraction *= c * d;
    if (Math.abs(c * d - 1) < LEAST_STEP) break;
  }
  return fraction;
}

/** ln B(a, b) of the last pair that was asked for: a quantile asks for one pair again and again. */
let asked = { a: Number.NaN, b: Number.NaN, logBeta: Number.NaN };

function logBeta(a: number, b: number): number {
  if (asked.a !== a || asked.b !== b) asked = { a, b, logBeta: logGamma(a) + logGamma(b) - logGamma(a + b) };
  return asked.logBeta;
}

/** The regularised incomplete beta function: DLMF 8.17.2. `y` is 1 − x, given apart so that no digits are lost. */
export function beta(a: number, b: number, x: number, y: number): number {
  if (x <= 0) return 0;
  if (y <= 0) return 1;
  const front = Math.exp(a * Math.log(x) + b * Math.log(y) - logBeta(a, b));
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(a, b, x)) / a : 1 - (front * betaFraction(b, a, y)) / b;
}
