import type { Family } from '../core/calculation.js';
import { bestFeed } from './bestFeed.js';
import { feedCurve } from './feedCurve.js';
import { feedForRun } from './feedForRun.js';
import { filtrationCost } from './filtrationCost.js';
import { planCheck } from './planCheck.js';
import { runCurve } from './runCurve.js';
import { runLength } from './runLength.js';
import { runReport } from './runReport.js';

export const planFamily: Family = {
  name: 'Plan',
  summary: 'One beer on one filter: how long a run gets, what it costs, and which body feed is best.',
  calculations: [runLength, runReport, runCurve, filtrationCost, bestFeed, feedCurve, feedForRun, planCheck],
};
