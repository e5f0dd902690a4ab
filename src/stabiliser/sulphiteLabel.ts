import { calculation } from '../core/calculation.js';
import { toSI } from '../core/units.js';

const BOUND = toSI(10, 'mg/L');

export const SULPHITE_RULES = [
  'EU: Regulation (EU) No 1169/2011, Annex II, point 12: declared above 10 mg/kg or 10 mg/L, as total SO₂.',
  'US: 27 CFR 7.63(b)(3), malt beverages: declared at 10 parts per million or more, as total SO₂.',
] as const;

export const sulphiteLabel = calculation({
  id: 'SULPHITELABEL',
  summary: 'Whether a beer’s total sulphite must be declared on the label.',
  question: 'Do I have to declare sulphites?',
  inputs: {
    total: {
      kind: 'number',
      label: 'Total sulphite',
      unit: 'mg/L',
      limit: [0, 10_000],
      usual: [0, 20],
      help: 'Total SO₂ of the finished beer: what the yeast made and what was added, together.',
      source: 'Usual range: common practice, no source.',
    },
    rule: { kind: 'choice', of: ['EU', 'US'], label: 'Rule', help: 'Where the beer is sold.' },
  },
  output: { kind: 'text', label: 'Label' },
  method:
    'EU: declare above 10 mg/L; US: declare at or above 10 ppm, with 1 ppm read as 1 mg/L: beer is a little heavier than water, so this declares rather a little too early than too late',
  sources: SULPHITE_RULES,
  cautions: ['food law'],
  example: { given: { total: 10, rule: 'US' }, result: 'declare' },
  compute: ({ total, rule }) => ((rule === 'EU' ? total > BOUND : total >= BOUND) ? 'declare' : 'none'),
});
