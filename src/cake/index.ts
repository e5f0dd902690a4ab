import type { Family } from '../core/calculation.js';
import { beerViscosity } from './beerViscosity.js';
import { cakePermeability } from './cakePermeability.js';
import { cakePressure } from './cakePressure.js';
import { cakeResistance } from './cakeResistance.js';
import { compareRuns } from './compareRuns.js';
import { feedRise } from './feedRise.js';
import { fitCake } from './fitCake.js';
import { fitCakes } from './fitCakes.js';
import { fitClarity } from './fitClarity.js';
import { fitCompression } from './fitCompression.js';
import { fitFeed } from './fitFeed.js';
import { fitLeaf } from './fitLeaf.js';
import { fitRun } from './fitRun.js';
import { mixPermeability } from './mixPermeability.js';
import { partPermeability } from './partPermeability.js';
import { riseRate } from './riseRate.js';
import { riseReport } from './riseReport.js';
import { testPermeability } from './testPermeability.js';
import { trialPlan } from './trialPlan.js';
import { waterDensity } from './waterDensity.js';
import { waterViscosity } from './waterViscosity.js';

export const cakeFamily: Family = {
  name: 'Cake',
  summary: 'How a cake resists the beer: viscosity, permeability, resistance and pressure rise.',
  calculations: [
    waterViscosity,
    waterDensity,
    beerViscosity,
    cakeResistance,
    cakePermeability,
    mixPermeability,
    partPermeability,
    testPermeability,
    cakePressure,
    riseRate,
    riseReport,
    fitRun,
    fitCake,
    fitCakes,
    fitLeaf,
    fitCompression,
    fitFeed,
    feedRise,
    fitClarity,
    compareRuns,
    trialPlan,
  ],
};
