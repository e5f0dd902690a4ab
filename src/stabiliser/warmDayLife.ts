import { calculation } from '../core/calculation.js';

export const warmDayLife = calculation({
  id: 'WARMDAYLIFE',
  summary: 'Haze-free life at 20 °C from a forcing test in warm days.',
  question: 'The forcing test lasted so many warm days: how long does the beer stay clear?',
  inputs: {
    warmDays: {
      kind: 'number',
      label: 'Warm days',
      unit: 'd',
      limit: [0, 1000],
      usual: [1, 30],
      help: 'Days at 40 or 60 °C, each followed by a day at 0 °C, until the haze has risen by 2 EBC.',
      source: 'Usual range: common practice, no source.',
    },
    factor: {
      kind: 'number',
      label: 'Factor',
      unit: 'd per warm day',
      limit: [0.01, 1000],
      help: 'Days at 20 °C for each warm day, found on this beer. There is no figure that serves every beer: the rule of a month for a warm day is common practice without a standard.',
      source: 'The limits only keep out slips of the keyboard; the figure is your own.',
    },
  },
  output: { kind: 'number', label: 'Life at 20 °C', unit: 'd' },
  method: 'warm days × the beer’s own factor; factor = days at 20 °C / warm days of bottles of the same beer',
  sources: ['Forcing test of the MEBAK collection of methods (mebak.org, B-420-02-900).'],
  example: { given: { warmDays: 6, factor: 25 }, result: 150 },
  compute: ({ warmDays, factor }) => warmDays * factor,
});
