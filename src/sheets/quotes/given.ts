import type { Calculation } from '../../core/calculation.js';
import { costPerHl } from '../../cost/costPerHl.js';
import { landedPrice } from '../../cost/landedPrice.js';
import { dryPrice } from '../../moisture/dryPrice.js';
import { swapDose } from '../../stabiliser/swapDose.js';
import type { Offer } from './offers.js';

export interface Given {
  readonly key: keyof Offer;
  readonly label: string;
  readonly feeds: readonly [Calculation, string];
  readonly digits?: number;
  readonly mayBeBlank?: true;
}

/** The columns to fill in, each with the input that it feeds. */
export const GIVEN: readonly Given[] = [
  { key: 'kind', label: 'Kind', feeds: [swapDose, 'toKind'] },
  { key: 'packPrice', label: 'Pack price', feeds: [landedPrice, 'packPrice'], digits: 2 },
  { key: 'packMass', label: 'Pack mass', feeds: [landedPrice, 'packMass'] },
  { key: 'freight', label: 'Freight', feeds: [landedPrice, 'freight'] },
  { key: 'discount', label: 'Discount', feeds: [landedPrice, 'discount'], mayBeBlank: true },
  { key: 'duty', label: 'Duty', feeds: [landedPrice, 'duty'], mayBeBlank: true },
  { key: 'loss', label: 'Loss', feeds: [landedPrice, 'loss'], mayBeBlank: true },
  { key: 'moisture', label: 'Moisture', feeds: [dryPrice, 'moisture'] },
  { key: 'ownDose', label: 'Own ladder dose', feeds: [costPerHl, 'dose'], mayBeBlank: true },
];
