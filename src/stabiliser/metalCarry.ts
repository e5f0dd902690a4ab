import { calculation } from '../core/calculation.js';
import { dose } from '../quantities.js';
import { content, UPPER_BOUND } from './carry.js';

export const metalCarry = calculation({
  id: 'METALCARRY',
  summary: 'The most of a metal that all powders together can bring into the beer.',
  question: 'How much iron, arsenic or lead can the powders add to the beer at worst?',
  inputs: {
    doses: {
      kind: 'series',
      least: 1,
      label: 'Doses',
      unit: dose.unit,
      limit: dose.limit,
      usual: dose.usual,
      source: dose.source,
      help: 'Of each powder as bought; the precoat as its share per hL of the run.',
    },
    contents: { ...content, kind: 'series', least: 1, label: 'Contents', help: `Of one metal. ${content.help}` },
  },
  output: { kind: 'number', label: 'Metal in the beer', unit: 'mg/L' },
  method: `Σ dose × content, ${UPPER_BOUND}. A soluble content by an extract stronger than beer is an upper bound too`,
  sources: [
    'Balance of mass.',
    'For scale: the USP-NF monograph on purified siliceous earth allows 10 mg/kg each of leachable arsenic and lead; brewers aim at less than 0.2 mg/L of iron in beer (Montana State University, page on iron).',
    'US: 21 CFR 172.480 lets silica be used in beer if it is filtered out; 21 CFR 173.50 the same for PVPP.',
  ],
  cautions: ['food law', 'dust'],
  example: { given: { doses: [90, 40], contents: [100, 50] }, result: 0.11 },
  compute: ({ doses, contents }) => doses.reduce((sum, dose, powder) => sum + dose * (contents[powder] as number), 0),
});
