import { quantity } from '../quantity.js';
import { wholeRefusal } from './whole.js';

export const samples = quantity({
  label: 'Samples',
  unit: '',
  limit: [100, 1_000_000],
  usual: [1000, 100_000],
  preset: 10_000,
  help: 'Pairs of plans that are drawn. Ten times as many take ten times as long and make the figures about three times as sharp.',
  source:
    'Limits: below 100, P10 and P90 rest on a handful of samples; more than a million stop the sheet for seconds.',
});

export const seed = quantity({
  label: 'Seed',
  unit: '',
  limit: [1, 2_147_483_647],
  preset: 1,
  help: 'A whole number that picks the random numbers: the same seed gives the same answer, another one shows how much is chance.',
  source: 'Limits: the whole numbers that the generator tells apart.',
});

export const samplingRefusal = (given: { readonly samples: number; readonly seed: number }): string | undefined =>
  wholeRefusal(samples.label, given.samples) ?? wholeRefusal(seed.label, given.seed);
