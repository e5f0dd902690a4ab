import { blocksOf, type Left } from './blocks.js';
import { type FitErrors, mixedErrors } from './mixedErrors.js';
import { total } from './sums.js';

/** Autocorrelations from one stretch of a log to the next that are looked through. */
const CORRELATIONS = [
  0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.78, 0.84, 0.89, 0.925, 0.95, 0.967, 0.98, 0.988, 0.993,
] as const;

/** Before a log is seen: as likely as not its readings are independent; if not, longer chains are a little less likely. */
const NONE = 0.5;
const BEFORE = (() => {
  const some = CORRELATIONS.map((one, index) => {
    const [before, after] = [CORRELATIONS[index - 1] ?? one, CORRELATIONS[index + 1] ?? one];
    return ((after - before) / 2) * (1 - one) ** 0.2;
  });
  const all = total(some, (one) => one);
  return some.map((one, index) => ((1 - NONE) * one) / all + (index === 0 ? NONE : 0));
})();

/** With less freedom nobody can tell how readings hang together: some two dozen readings of a log. */
const TOLD_FROM = 21;
/** How sure the figures of a fit to readings of a gauge are. */
export interface ReadingErrors extends FitErrors {
  /** Whether there are enough readings to tell how they hang together. */
  readonly told: boolean;
  /** Correlation of a reading’s error with its neighbour’s. */
  readonly autocorrelation: number;
}

/**
 * Errors that hold where neighbouring readings err together and where scatter grows along the log. Each autocorrelation is
 * weighed by its restricted likelihood; the truth’s distribution is the mixture of one Student’s t for each.
 * @returns undefined where no freedom is left.
 */
export function readingErrors(logs: readonly Left[]): ReadingErrors | undefined {
  if (!logs.some(({ residuals, design }) => residuals.length > design.length)) return undefined;
  if (logs.every(({ residuals }) => residuals.every((one) => one === 0))) return NO_ERROR;
  const blocks = blocksOf(logs);
  const cases = CORRELATIONS.map((correlation, index) => ({ blocks, correlation, before: BEFORE[index] as number }));
  const { freedom, ...errors } = mixedErrors(cases);
  return {
    ...errors,
    told: freedom >= TOLD_FROM,
    autocorrelation: total(blocks, (one) => one.neighbours) / total(blocks, (one) => one.squares),
  };
}

/** A curve through every reading. */
const NO_ERROR: ReadingErrors = {
  told: false,
  autocorrelation: 0,
  mean: () => 0,
  of: () => ({ error: 0, reach: 0 }),
};
