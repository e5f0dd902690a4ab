import { createRequire } from 'node:module';

interface Solver {
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  solve(
    rates: (x: number, y: readonly number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
  ): { readonly y: readonly number[]; readonly outcome: number };
}

// Required, not imported: the package ships its source, which the compiler would hold to this project's rules.
const odex = createRequire(import.meta.url)('odex') as { readonly Solver: new (size: number) => Solver };

/** y at `to` from y at `from` and its rate of change, by extrapolation. */
export function integrate(rate: (x: number, y: number) => number, from: number, start: number, to: number): number {
  const solver = new odex.Solver(1);
  solver.absoluteTolerance = 1e-13;
  solver.relativeTolerance = 1e-12;
  solver.maxSteps = 100_000;
  const { y, outcome } = solver.solve((x, [value = 0]) => [rate(x, value)], from, [start], to);
  if (outcome !== 0) throw new Error('The integration did not converge.');
  return y[0] as number;
}
