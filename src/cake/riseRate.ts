import { calculation } from '../core/calculation.js';
import { medianSlope } from '../numerics/medianSlope.js';
import { pressureLog } from './fitInputs.js';

export const riseRate = calculation({
  id: 'RISERATE',
  summary: 'Pressure rise of a run that one bad reading does not move.',
  question: 'How fast does the pressure rise?',
  inputs: {
    hours: {
      kind: 'series',
      least: 2,
      label: 'Hours',
      unit: 'h',
      limit: [-1e6, 1e6],
      help: 'Time of each reading in hours, in any order. Times of day are fractions of a day: multiply them by 24.',
      source: 'The limits only keep out slips of the keyboard; the figure is your own.',
    },
    bars: { ...pressureLog, least: 2 },
  },
  output: { kind: 'number', label: 'Rise', unit: 'bar/h' },
  method:
    'median of the slopes between all pairs of readings at different times, exact; up to some 29 % of the readings may be wrong without moving it far',
  sources: [
    'H. Theil, A rank-invariant method of linear and polynomial regression analysis, 1950; P. K. Sen, Estimates of the regression coefficient based on Kendall’s tau, 1968.',
  ],
  cautions: ['pressure'],
  example: { given: { hours: [0, 1, 2, 3, 4], bars: [0.6, 0.9, 1.2, 4, 1.8] }, result: 0.3 },
  compute: ({ hours, bars }) =>
    medianSlope(hours, bars) ?? { none: 'All readings stand at the same time, so no rise can be told.' },
});
