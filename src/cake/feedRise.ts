import { calculation } from '../core/calculation.js';
import { permeability } from '../quantities.js';
import { feedInputs, hoursRefusal, NO_STABILISER_PERMEABILITY } from './feedInputs.js';
import { meanRise } from './meanRise.js';
import { mixedResistance } from './parts.js';
import { DARCY_SOURCE, MIXTURE_SOURCE, ROUND_SOURCE } from './sources.js';

const { dose, flux, viscosity, beerSolids, cakeDensity, stabiliser, stabiliserPermeability, ...onSeptum } = feedInputs;

export const feedRise = calculation({
  id: 'FEEDRISE',
  summary: 'Pressure rise at a body feed, from the permeabilities of the parts.',
  question: 'How fast does the pressure rise at this body feed?',
  inputs: {
    dose,
    aidPermeability: { ...permeability, label: 'Aid permeability' },
    beerSolidsPermeability: { ...permeability, label: 'Beer solids permeability' },
    beerSolids,
    flux,
    viscosity,
    cakeDensity,
    stabiliser,
    stabiliserPermeability,
    ...onSeptum,
  },
  output: { kind: 'number', label: 'Rise', unit: 'bar/h' },
  method:
    'flat septum, rigid cake: μ u² c/(k ρ) with c the dry solids in all and ln k their permeabilities’ mean by share. On a candle, or compressible: what the pressure drop gains between both times, over the hours between. Trust it between the doses that FITFEED saw',
  sources: [DARCY_SOURCE, MIXTURE_SOURCE, ROUND_SOURCE],
  cautions: ['pressure'],
  example: {
    given: {
      dose: 89.55,
      aidPermeability: 0.1,
      beerSolidsPermeability: 1e-4,
      beerSolids: 25,
      flux: 5,
      viscosity: 2.8,
      cakeDensity: 300,
      stabiliser: 21,
      stabiliserPermeability: 0.02,
    },
    result: 0.408_393_931_155,
  },
  refuse: ({ stabiliser, stabiliserPermeability, from, until, ...read }) =>
    stabiliser > 0 && stabiliserPermeability === undefined
      ? NO_STABILISER_PERMEABILITY
      : hoursRefusal(read, from, until),
  compute: ({ dose, stabiliser, beerSolids, ...read }) => {
    const { aidPermeability: aid, beerSolidsPermeability: beer, stabiliserPermeability = aid } = read;
    const parts = { aid: dose, stabiliser, beer: beerSolids };
    const resistance = mixedResistance(parts, { aid, beer, stabiliser: stabiliserPermeability }, read.cakeDensity);
    return meanRise({ ...read, solids: dose + stabiliser + beerSolids }, resistance);
  },
});
