import type { Family } from '../core/calculation.js';
import { bodyFeed } from './bodyFeed.js';
import { cakeDepth } from './cakeDepth.js';
import { cakeLoad } from './cakeLoad.js';
import { cakeSolids } from './cakeSolids.js';
import { chargeHours } from './chargeHours.js';
import { doseMade } from './doseMade.js';
import { feedAfterSwap } from './feedAfterSwap.js';
import { feedForSolids } from './feedForSolids.js';
import { precoatMass } from './precoatMass.js';
import { pumpRate } from './pumpRate.js';
import { slurryStrength } from './slurryStrength.js';
import { slurryWater } from './slurryWater.js';
import { solidsLoad } from './solidsLoad.js';

export const feedFamily: Family = {
  name: 'Feed',
  summary: 'Precoat, body feed, slurry tank and dosing pump, and the solids that reach the cake.',
  calculations: [
    precoatMass,
    cakeDepth,
    cakeLoad,
    slurryStrength,
    slurryWater,
    bodyFeed,
    pumpRate,
    doseMade,
    chargeHours,
    solidsLoad,
    cakeSolids,
    feedAfterSwap,
    feedForSolids,
  ],
};
