import type { Uncertain } from '../numerics/mixedErrors.js';
import type { ReadingErrors } from '../numerics/readingErrors.js';

/** What a fit to readings of a gauge says of its standard errors, after all else. */
export const errorFields = {
  autocorrelation: { label: 'Autocorrelation of the readings', unit: '' },
  independent: { label: 'Independent readings that would tell as much', unit: '' },
  times: { label: 'Standard errors in 95 %', unit: '' },
  errors: { label: 'Standard errors', text: true },
} as const;

/** The method in words, for every fit that has these fields. */
export const ERRORS_METHOD =
  'Standard errors allow for readings that err together and for scatter that grows along the log; the truth lies within Standard errors in 95 % times them in 95 % of logs, unless the report says that it cannot be known. They do not know how one run differs from the next (COMPARERUNS)';

export const ERRORS_SOURCE =
  'Errors: restricted likelihood of a first-order chain of readings (J. A. Nelder and others; textbooks of time series), Student’s t (W. S. Gosset, Biometrika 6 (1908) 1), scatter as a line over the log (H. Glejser, J. Am. Stat. Assoc. 64 (1969) 316); references from memory.';

/** From here on neighbouring readings are said to err together. */
const TOGETHER = 0.3;

/** What the errors of a fit are worth, in words. */
export function errorsRemark(errors: ReadingErrors | undefined): string {
  if (errors === undefined) return 'too few rows to tell any error';
  if (!errors.told)
    return 'cannot be known: so few rows do not tell whether neighbouring readings err together, and the errors hold where they do not';
  return errors.autocorrelation > TOGETHER
    ? 'hold for this run alone, though neighbouring readings err together: so many rows count as fewer'
    : 'hold for this run alone: how runs differ takes repeated runs';
}

/** How many standard errors hold the truth in 95 % of cases, of the figures of one fit together. */
export function timesOf(figures: readonly (Uncertain | undefined)[]): number | undefined {
  const times = figures.map((one) => (one ? one.reach / one.error : Number.NaN)).filter(Number.isFinite);
  return times.length > 0 ? Math.max(...times) : undefined;
}
