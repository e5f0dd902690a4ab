import type { Family } from '../core/calculation.js';
import { costPerHl } from './costPerHl.js';
import { powderPerHl } from './powderPerHl.js';

export const costFamily: Family = {
  name: 'Cost',
  summary: 'What powder costs per hL and per year.',
  calculations: [costPerHl, powderPerHl],
};
