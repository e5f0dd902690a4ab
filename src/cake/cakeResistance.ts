import { calculation } from '../core/calculation.js';
import { cakeDensity, permeability } from '../quantities.js';
import { DARCY_SOURCE } from './sources.js';

export const cakeResistance = calculation({
  id: 'CAKERESISTANCE',
  summary: 'Specific cake resistance from permeability and cake density.',
  question: 'Which cake resistance belongs to this permeability?',
  inputs: { permeability, density: cakeDensity },
  output: { kind: 'number', label: 'Cake resistance', unit: 'm/kg' },
  method: '1 / (permeability × cake density)',
  sources: [DARCY_SOURCE],
  example: { given: { permeability: 0.1, density: 300 }, result: 33_775_000_000 },
  compute: ({ permeability, density }) => 1 / (permeability * density),
});
