import { calculation } from '../core/calculation.js';
import { waterDensityAt } from '../numerics/water.js';
import { IAPWS_SOURCE, waterTemperature } from './water.js';

export const waterDensity = calculation({
  id: 'WATERDENSITY',
  summary: 'Density of water at a temperature.',
  question: 'What does a m³ of this water weigh?',
  inputs: { temperature: waterTemperature },
  output: { kind: 'number', label: 'Water density', unit: 'kg/m³' },
  method: 'reciprocal of the specific volume of the release’s equation, for air-free water at 0.1 MPa',
  sources: [
    IAPWS_SOURCE,
    'Agrees within 1 part in a million, 0 to 40 °C, with the density table recommended by the CIPM (Metrologia 38 (2001) 301).',
  ],
  example: { given: { temperature: 25 }, result: 997.047_013_399_764_9 },
  compute: ({ temperature }) => waterDensityAt(temperature),
});
