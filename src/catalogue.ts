import { cakeFamily } from './cake/index.js';
import type { Calculation, Family } from './core/calculation.js';
import { costFamily } from './cost/index.js';
import { feedFamily } from './feed/index.js';
import { moistureFamily } from './moisture/index.js';
import { planFamily } from './plan/index.js';
import { safetyFamily } from './safety/index.js';
import { stabiliserFamily } from './stabiliser/index.js';

/** Every family of calculations, in the order in which people meet them. */
export const families: readonly Family[] = [
  moistureFamily,
  stabiliserFamily,
  feedFamily,
  cakeFamily,
  planFamily,
  costFamily,
  safetyFamily(() => catalogue),
];

/** Every calculation, in order. */
export const catalogue: readonly Calculation[] = families.flatMap(({ calculations }) => calculations);
