import { calculation } from '../core/calculation.js';
import { cakeLoad, cakeResistance, septumRadius, viscosity } from '../quantities.js';
import { densityRefusal, dryPrecoat, optionalDensity, septumOf } from './fitInputs.js';
import { compressibility, flux } from './inputs.js';
import { cakePressureDrop, flatLoad } from './pressureDrop.js';
import { DARCY_SOURCE, ROUND_SOURCE } from './sources.js';

export const cakePressure = calculation({
  id: 'CAKEPRESSURE',
  summary: 'Pressure drop over a cake of a given load and what carries it.',
  question: 'What pressure drop does this cake take at this flow?',
  inputs: {
    flux,
    viscosity,
    load: cakeLoad,
    resistance: cakeResistance,
    medium: {
      kind: 'number',
      label: 'Medium resistance',
      unit: '1/m',
      limit: [0, 1e20],
      preset: 0,
      help: 'Of what carries the cake: septum and precoat, where the load does not count the precoat.',
      source: 'The limits only keep out slips of the keyboard; the figure is your own.',
    },
    compressibility,
    septumRadius,
    cakeDensity: optionalDensity,
    precoatLoad: {
      ...dryPrecoat,
      help: 'Dry, and not counted in the load: what lies under the cake on a round septum, where it widens the cake. Its own pressure drop belongs to the medium.',
    },
  },
  output: { kind: 'number', label: 'Pressure drop', unit: 'bar' },
  method:
    'μ u R_medium + Δp_cake; flat: Δp_cake^(1−n) = μ u α w (1 bar)^−n; on a cylinder the load w is taken as (ρ r/2) ln(1 + w/(ρ r/2 + precoat load))',
  sources: [DARCY_SOURCE, ROUND_SOURCE],
  cautions: ['pressure'],
  example: {
    given: { flux: 5, viscosity: 2, load: 1, resistance: 33_775_000_000 / 10 },
    result: 0.009_381_944_444_444_4,
  },
  refuse: densityRefusal,
  compute: ({ load, medium, septumRadius, cakeDensity, precoatLoad, ...flowing }) =>
    flowing.viscosity * flowing.flux * medium +
    cakePressureDrop(flatLoad(load, septumOf({ septumRadius, cakeDensity }), precoatLoad), flowing),
});
