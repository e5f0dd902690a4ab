import { calculation } from '../core/calculation.js';
import { area, precoatLoad } from '../quantities.js';

export const precoatMass = calculation({
  id: 'PRECOATMASS',
  summary: 'Powder for a precoat of a given load.',
  question: 'How much powder does the precoat take?',
  inputs: {
    area,
    load: precoatLoad,
  },
  output: { kind: 'number', label: 'Precoat', unit: 'kg' },
  method: 'filter area × precoat load',
  sources: ['Definition of the load; in drinking-water rules (Minnesota 4720.3950) 0.1 lb/ft².'],
  cautions: ['dust'],
  example: { given: { area: 50, load: 800 }, result: 40 },
  compute: ({ area, load }) => area * load,
});
