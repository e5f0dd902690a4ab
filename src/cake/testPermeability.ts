import { calculation } from '../core/calculation.js';
import { viscosity } from '../quantities.js';

const BENCH = 'Limits and usual range: bench practice, no source.';

export const testPermeability = calculation({
  id: 'TESTPERMEABILITY',
  summary: 'Permeability of a powder from a bench filtration through a cake of known depth.',
  question: 'Does this lot of powder let through what the last one did?',
  inputs: {
    filtrate: {
      kind: 'number',
      label: 'Filtrate',
      unit: 'mL',
      limit: [0.001, 1e6],
      usual: [50, 2000],
      help: 'Volume that ran through while the time was taken, with the cake fully formed and covered.',
      source: BENCH,
    },
    time: {
      kind: 'number',
      label: 'Time',
      unit: 's',
      limit: [0.01, 1e6],
      usual: [10, 1000],
      help: 'How long that volume took.',
      source: BENCH,
    },
    area: {
      kind: 'number',
      label: 'Cake area',
      unit: 'cm²',
      limit: [0.01, 1e6],
      usual: [5, 500],
      help: 'Area of the cake across the flow.',
      source: BENCH,
    },
    depth: {
      kind: 'number',
      label: 'Cake depth',
      unit: 'mm',
      limit: [0.1, 10_000],
      usual: [10, 50],
      help: 'Depth of the cake after the test.',
      source: BENCH,
    },
    pressure: {
      kind: 'number',
      label: 'Pressure drop',
      unit: 'bar',
      limit: [0.0001, 100],
      usual: [0.3, 2],
      help: 'Held across the cake during the test; the support’s own pressure drop must be negligible.',
      source: BENCH,
    },
    viscosity: {
      ...viscosity,
      usual: [0.8, 1.6],
      help: 'Of the test liquid at its temperature; for water see WATERVISCOSITY.',
      source: 'Usual range: water from 0 to 30 °C (IAPWS SR6-08).',
    },
  },
  output: { kind: 'number', label: 'Permeability', unit: 'darcy' },
  method:
    'Darcy’s law: filtrate × viscosity × depth / (cake area × time × pressure drop). No standard test exists for filter aids, in the US or in Europe: compare only figures taken with the same slurry, depth, pressure and liquid, and report these conditions with the figure',
  sources: ['Darcy’s law; 1 darcy = 1 cm³/s through 1 cm² at 1 mPa·s and 1 atm per cm.'],
  cautions: ['dust', 'pressure'],
  example: {
    given: { filtrate: 60, time: 60, area: 10, depth: 25, pressure: 1.01325, viscosity: 1 },
    result: 0.25,
  },
  compute: ({ filtrate, time, area, depth, pressure, viscosity }) =>
    (filtrate * viscosity * depth) / (area * time * pressure),
});
