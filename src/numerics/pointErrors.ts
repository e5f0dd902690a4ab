import type { Blocks } from './blocks.js';
import { type FitErrors, mixedErrors } from './mixedErrors.js';

/** Scatter goes as the level to one of these powers, each as likely as the weight beside it: alike, in between, in proportion. */
const POWERS = [
  [0, 1],
  [0.5, 1],
  [1, 1.5],
] as const;

/**
 * Errors of a fit to a few points that err each on its own, where nobody knows whether they scatter alike or in proportion
 * to how high the curve lies there.
 * @param levels heights of the fitted curve, above 0.
 * @returns undefined where no freedom is left.
 */
export function pointErrors(
  { residuals, design, weights }: Pick<Blocks, 'residuals' | 'design' | 'weights'>,
  levels: Float64Array,
): FitErrors | undefined {
  if (residuals.length <= design.length) return undefined;
  if (residuals.every((one) => one === 0)) return { mean: () => 0, of: () => ({ error: 0, reach: 0 }) };
  return mixedErrors(
    POWERS.map(([power, before]) => {
      const scales = levels.map((level) => level ** power);
      const over = (values: Float64Array) => values.map((one, point) => one / (scales[point] as number));
      return {
        blocks: [
          {
            residuals: over(residuals),
            design: design.map(over),
            weights: weights.map((values) => values.map((one, point) => one * (scales[point] as number))),
            squares: 0,
            neighbours: 0,
          },
        ],
        correlation: 0,
        before,
        scale: scales.reduce((sum, one) => sum + Math.log(one), 0),
      };
    }),
  );
}
