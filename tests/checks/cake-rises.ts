import type { PublishedCheck } from './check.js';

export const cakeRiseChecks: readonly PublishedCheck[] = [
  {
    calculation: 'CAKEPRESSURE',
    given: { flux: 5, viscosity: 2, load: 1, resistance: 3.3775e9 },
    expected: 938.194e-5,
    tolerance: 1e-6,
    source: 'Darcy’s law: 3.333 mm of 1 darcy at 1.388889e-4 m/s and 2 mPa·s take 938.194 Pa',
    kind: 'derived',
  },
  {
    calculation: 'FEEDRISE',
    given: {
      dose: 75,
      aidPermeability: 0.3,
      beerSolidsPermeability: 0.3,
      beerSolids: 25,
      flux: 5,
      viscosity: 2,
      cakeDensity: 300,
    },
    expected: 0.0156366,
    tolerance: 3e-6,
    source:
      'Darcy’s law: 100 g/hL of one permeability, 0.3 darcy, 300 kg/m³, at 5 hL/(m² h) and 2 mPa·s: 0.434349 Pa/s',
    kind: 'derived',
  },
  {
    calculation: 'RISERATE',
    given: { hours: [1, 2, 3, 4, 10, 12, 18], bars: [9, 15, 19, 20, 45, 55, 78] },
    expected: 4,
    tolerance: 1e-12,
    source: 'P. K. Sen, J. Am. Stat. Assoc. 63 (1968) 1379, worked example',
    kind: 'from memory',
  },
  {
    calculation: 'CAKEPRESSURE',
    given: { flux: 5, viscosity: 2, load: 2, resistance: 3.3775e9, medium: 0 },
    expected: 2 * 938.194e-5,
    tolerance: 1e-6,
    source:
      'at constant rate twice the filtrate, so twice the cake, takes twice the pressure drop (10 to 20 kPa from 120 to 240 of volume, examination question on cake filtration, questions.collegedunia.com)',
    kind: 'derived',
  },
];
