import { calculation } from '../core/calculation.js';
import { waterViscosityAt } from '../numerics/water.js';
import { IAPWS_SOURCE, waterTemperature } from './water.js';

export const waterViscosity = calculation({
  id: 'WATERVISCOSITY',
  summary: 'Viscosity of water at a temperature.',
  question: 'How viscous is the water of a precoat circulation or a test?',
  inputs: { temperature: waterTemperature },
  output: { kind: 'number', label: 'Water viscosity', unit: 'mPa·s' },
  method:
    'Σ aᵢ (T / 300 K)^bᵢ µPa·s with a = 280.68, 511.45, 61.131, 0.45903 and b = −1.9, −7.7, −19.6, −40; at 0.1 MPa, and hardly different at a filter’s pressure',
  sources: [IAPWS_SOURCE],
  example: { given: { temperature: 25 }, result: 0.889_996_773_679_429_8 },
  compute: ({ temperature }) => waterViscosityAt(temperature),
});
