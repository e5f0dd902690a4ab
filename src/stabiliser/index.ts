import type { Family } from '../core/calculation.js';
import { contactTank } from './contactTank.js';
import { contactTime } from './contactTime.js';
import { ladderDose } from './ladderDose.js';
import { ladderFit } from './ladderFit.js';
import { metalCarry } from './metalCarry.js';
import { storageLife } from './storageLife.js';
import { sulphiteCarry } from './sulphiteCarry.js';
import { sulphiteLabel } from './sulphiteLabel.js';
import { swapDose } from './swapDose.js';
import { swapRange } from './swapRange.js';
import { warmDayLife } from './warmDayLife.js';

export const stabiliserFamily: Family = {
  name: 'Stabiliser',
  summary: 'Which stabiliser, how much of it, how long it needs and what it leaves behind.',
  calculations: [
    swapDose,
    swapRange,
    contactTank,
    contactTime,
    ladderFit,
    ladderDose,
    warmDayLife,
    storageLife,
    sulphiteCarry,
    sulphiteLabel,
    metalCarry,
  ],
};
