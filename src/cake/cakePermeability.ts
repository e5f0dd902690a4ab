import { calculation } from '../core/calculation.js';
import { cakeDensity, cakeResistance } from '../quantities.js';
import { DARCY_SOURCE } from './sources.js';

export const cakePermeability = calculation({
  id: 'CAKEPERMEABILITY',
  summary: 'Permeability from specific cake resistance and cake density.',
  question: 'Which permeability belongs to this cake resistance?',
  inputs: { resistance: cakeResistance, density: cakeDensity },
  output: { kind: 'number', label: 'Permeability', unit: 'darcy' },
  method: '1 / (cake resistance × cake density)',
  sources: [DARCY_SOURCE],
  example: { given: { resistance: 33_775_000_000, density: 300 }, result: 0.1 },
  compute: ({ resistance, density }) => 1 / (resistance * density),
});
