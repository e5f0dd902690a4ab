import { cakeFitChecks } from './cake-fits.js';
import { cakeMixChecks } from './cake-mix.js';
import { cakeRiseChecks } from './cake-rises.js';
import { cakeRunChecks } from './cake-runs.js';
import { cakeWaterChecks } from './cake-water.js';
import type { PublishedCheck } from './check.js';
import { costChecks } from './cost.js';
import { feedChecks } from './feed.js';
import { laboratoryChecks } from './laboratory.js';
import { moistureChecks } from './moisture.js';
import { nistChecks } from './nist.js';
import { operatorChecks } from './operators.js';
import { planChecks } from './plan.js';
import { pressChecks } from './press.js';
import { purchaseChecks } from './purchase.js';
import { safetyChecks } from './safety.js';
import { stabiliserChecks } from './stabiliser.js';
import { waterworksChecks } from './waterworks.js';

/** Every check against a figure from outside, family by family. */
export const CHECKS: readonly PublishedCheck[] = [
  ...moistureChecks,
  ...stabiliserChecks,
  ...feedChecks,
  ...cakeWaterChecks,
  ...cakeMixChecks,
  ...cakeFitChecks,
  ...cakeRiseChecks,
  ...cakeRunChecks,
  ...nistChecks,
  ...operatorChecks,
  ...waterworksChecks,
  ...pressChecks,
  ...planChecks,
  ...costChecks,
  ...purchaseChecks,
  ...laboratoryChecks,
  ...safetyChecks,
];
