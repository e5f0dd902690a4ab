/** A second way to the same figures, written apart from the library: normal equations, inverted outright. */
export function gaussNewton(x: readonly number[], y: readonly number[], from: readonly [number, number, number]) {
  let parameters: number[] = [...from];
  for (let round = 0; round < 200; round++) {
    const { gram, right } = normalEquations(x, y, parameters);
    const step = multiply(invert(gram), right);
    parameters = parameters.map((one, i) => one + (step[i] as number));
  }
  const { gram, squares } = normalEquations(x, y, parameters);
  const deviation = Math.sqrt(squares / (x.length - 3));
  const errors = invert(gram).map((row, i) => deviation * Math.sqrt(row[i] as number));
  return { parameters, errors, deviation };
}

function normalEquations(x: readonly number[], y: readonly number[], [start, plateau, rate]: readonly number[]) {
  const gram = [0, 1, 2].map(() => [0, 0, 0]);
  const right = [0, 0, 0];
  let squares = 0;
  for (const [point, dose] of x.entries()) {
    const left = Math.exp(-(rate as number) * dose);
    const fall = (start as number) - (plateau as number);
    const residual = (y[point] as number) - (plateau as number) - fall * left;
    const row = [left, 1 - left, -fall * dose * left];
    squares += residual * residual;
    for (let i = 0; i < 3; i++) {
      right[i] = (right[i] as number) + (row[i] as number) * residual;
      for (let j = 0; j < 3; j++)
        (gram[i] as number[])[j] = (gram[i]?.[j] as number) + (row[i] as number) * (row[j] as number);
    }
  }
  return { gram, right, squares };
}

const multiply = (matrix: readonly (readonly number[])[], vector: readonly number[]): number[] =>
  matrix.map((row) => row.reduce((sum, one, i) => sum + one * (vector[i] as number), 0));

/** The inverse of a 3 × 3 matrix by cofactors. */
function invert(m: readonly (readonly number[])[]): number[][] {
  const at = (i: number, j: number): number => m[i % 3]?.[j % 3] as number;
  const cofactor = (i: number, j: number): number =>
    at(i + 1, j + 1) * at(i + 2, j + 2) - at(i + 1, j + 2) * at(i + 2, j + 1);
  const determinant = [0, 1, 2].reduce((sum, j) => sum + at(0, j) * cofactor(0, j), 0);
  return [0, 1, 2].map((i) => [0, 1, 2].map((j) => cofactor(j, i) / determinant));
}

/** Standard normal deviates from a seed: a counter well mixed, then Box and Muller. */
export function normalDeviates(seed: number): () => number {
  let counter = seed;
  const uniform = (): number => {
    counter = (counter + 0x9e3779b9) | 0;
    let mixed = Math.imul(counter ^ (counter >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}
