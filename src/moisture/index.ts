import type { Family } from '../core/calculation.js';
import { asIsMass } from './asIsMass.js';
import { dryBasis } from './dryBasis.js';
import { dryMass } from './dryMass.js';
import { dryPrice } from './dryPrice.js';
import { moistureCredit } from './moistureCredit.js';
import { ovenMoisture } from './ovenMoisture.js';
import { sameSolids } from './sameSolids.js';
import { wetBasis } from './wetBasis.js';

export const moistureFamily: Family = {
  name: 'Moisture',
  summary: 'Water in powders: what is dry, what is bought, what is owed.',
  calculations: [dryMass, asIsMass, sameSolids, ovenMoisture, dryBasis, wetBasis, dryPrice, moistureCredit],
};
