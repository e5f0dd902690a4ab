import { calculation } from '../core/calculation.js';
import { dose } from '../quantities.js';
import { content, UPPER_BOUND } from './carry.js';
import { SULPHITE_RULES } from './sulphiteLabel.js';

export const sulphiteCarry = calculation({
  id: 'SULPHITECARRY',
  summary: 'The most sulphite that a powder can bring into the beer.',
  question: 'How much SO₂ can this powder add to the beer at worst?',
  inputs: { dose, content: { ...content, kind: 'number', label: 'Sulphite content', help: `As SO₂. ${content.help}` } },
  output: { kind: 'number', label: 'Sulphite in the beer', unit: 'mg/L' },
  method: `dose × sulphite content, ${UPPER_BOUND}`,
  sources: ['Balance of mass.', ...SULPHITE_RULES],
  cautions: ['food law', 'dust'],
  example: { given: { dose: 100, content: 500 }, result: 0.5 },
  compute: ({ dose, content }) => dose * content,
});
