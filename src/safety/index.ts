import type { Family } from '../core/calculation.js';
import { laboratoryCalculations } from '../laboratory/index.js';
import { dustAverage } from './dustAverage.js';
import { dustSum } from './dustSum.js';
import type { Catalogue } from './find.js';
import { rangeCheck } from './rangeCheck.js';
import { safeRange } from './safeRange.js';

/** The functions that read the declarations of all others are handed the list, so that imports form no circle. */
export const safetyFamily = (catalogue: Catalogue): Family => ({
  name: 'Laboratory and safety',
  summary: 'Units, laboratory figures, dust in the air, and the ranges of every input.',
  calculations: [...laboratoryCalculations, dustAverage, dustSum, safeRange(catalogue), rangeCheck(catalogue)],
});
