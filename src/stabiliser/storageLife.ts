import { calculation } from '../core/calculation.js';
import { temperature } from '../quantities.js';

const store = { ...temperature, limit: [-5, 70], help: 'Of the beer in store.' } as const;

export const storageLife = calculation({
  id: 'STORAGELIFE',
  summary: 'Storage time at another temperature that ages a beer as much.',
  question: 'So many days at this temperature equal how many at another?',
  inputs: {
    days: {
      kind: 'number',
      label: 'Days',
      unit: 'd',
      limit: [0, 10_000],
      usual: [1, 365],
      help: 'Time in store at the first temperature.',
      source: 'Usual range: common practice, no source.',
    },
    temperature: { ...store, help: 'At which these days were spent.' },
    newTemperature: { ...store, label: 'New temperature', help: 'At which the equal time is looked for.' },
    q10: {
      kind: 'number',
      label: 'Q10',
      unit: '',
      limit: [1, 10],
      usual: [2, 3],
      preset: 2,
      help: 'How many times faster the beer ages at 10 °C more.',
      source: 'Usual range: 2 to 3, as for most chemical change in food; common practice.',
    },
  },
  output: { kind: 'number', label: 'Days at the new temperature', unit: 'd' },
  method:
    'days × Q10^((temperature − new temperature) / 10 °C); a rule of thumb for one kind of ageing, not for freezing or for chill haze',
  sources: [
    'Q10 rule as published for beer: 2 weeks at 30 °C equal 4, 8 and 16 weeks at 20, 10 and 0 °C (C. W. Bamforth and A. Lentini in C. W. Bamforth, I. Russell and G. Stewart (editors), Beer: A Quality Perspective, 2009, pages 85–109, chapter’s authors from memory).',
  ],
  example: { given: { days: 14, temperature: 30, newTemperature: 0 }, result: 112 },
  compute: ({ days, temperature, newTemperature, q10 }) => days * q10 ** ((temperature - newTemperature) / 10),
});
