import type { Family } from '../core/calculation.js';
import { beerCost } from './beerCost.js';
import { beerRun } from './beerRun.js';
import { bestFeed } from './bestFeed.js';
import { breakEven } from './breakEven.js';
import { feedCurve } from './feedCurve.js';
import { feedForRun } from './feedForRun.js';
import { filtrationCost } from './filtrationCost.js';
import { planCheck } from './planCheck.js';
import { runCurve } from './runCurve.js';
import { runLength } from './runLength.js';
import { runReport } from './runReport.js';
import { runSteps } from './runSteps.js';
import { saving } from './saving.js';
import { savingSensitivity } from './savingSensitivity.js';
import { savingSpread } from './savingSpread.js';
import { sensitivity } from './sensitivity.js';

export const planFamily: Family = {
  name: 'Plan',
  summary:
    'One beer on one filter: how long a run gets, what it costs, which body feed is best, and what another plan saves.',
  calculations: [
    runLength,
    runReport,
    runCurve,
    runSteps,
    filtrationCost,
    bestFeed,
    feedCurve,
    feedForRun,
    breakEven,
    saving,
    savingSpread,
    sensitivity,
    planCheck,
    beerRun,
    beerCost,
    savingSensitivity,
  ],
};
