import { planLabel } from './planLabel.js';

export const yearLabels = {
  yearVolume: planLabel({
    group: 'year',
    label: 'Year volume',
    unit: 'hL',
    limit: [0.001, 1e9],
    usual: [5000, 5e6],
    help: 'Beer that this filter runs in a year.',
    source: 'Usual range: common practice, no source.',
  }),
} as const;
