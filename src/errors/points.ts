import { studentQuantile } from '../numerics/student.js';

export const STUDENT_SOURCE =
  'Student’s t: W. S. Gosset, Biometrika 6 (1908) 1 (reference from memory); its quantiles as in any table.';

/** The method in words, for fits to points that err each on its own. */
export const POINTS_METHOD =
  'The truth lies within Standard errors in 95 % times the standard error in 95 % of cases (Student’s t)';

/** So few degrees of freedom leave errors that are rough themselves. */
const ROUGH = 3;

/** What a report says of the errors of a line through points that err each on its own and alike. */
export const pointsTold = (freedom: number, points: 'runs' | 'tests') => ({
  times: freedom > 0 ? studentQuantile(0.95, freedom) : undefined,
  errors:
    freedom < 1
      ? `too few ${points} to tell any error`
      : freedom < ROUGH
        ? `rough: ${freedom} ${freedom === 1 ? 'degree' : 'degrees'} of freedom; further ${points} help most`
        : `hold where ${points} err each on its own`,
});
