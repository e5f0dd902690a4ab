import { calculation } from '../core/calculation.js';
import { permeability } from '../quantities.js';
import { feedInputs, NO_STABILISER_PERMEABILITY } from './feedInputs.js';
import { mixedResistance } from './parts.js';
import { DARCY_SOURCE, MIXTURE_SOURCE } from './sources.js';

const { dose, flux, viscosity, beerSolids, cakeDensity, stabiliser, stabiliserPermeability } = feedInputs;

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
  },
  output: { kind: 'number', label: 'Rise', unit: 'bar/h' },
  method:
    'μ u² c/(k ρ) with c the dry solids in all and ln k their permeabilities’ mean by share; flat septum, rigid cake. Trust it between the doses that FITFEED saw',
  sources: [DARCY_SOURCE, MIXTURE_SOURCE],
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
  refuse: ({ stabiliser, stabiliserPermeability }) =>
    stabiliser > 0 && stabiliserPermeability === undefined ? NO_STABILISER_PERMEABILITY : undefined,
  compute: ({ dose, stabiliser, beerSolids, flux, viscosity, cakeDensity, ...permeabilities }) => {
    const { aidPermeability: aid, beerSolidsPermeability: beer, stabiliserPermeability = aid } = permeabilities;
    const solids = { aid: dose, stabiliser, beer: beerSolids };
    const resistance = mixedResistance(solids, { aid, beer, stabiliser: stabiliserPermeability }, cakeDensity);
    return viscosity * flux * flux * resistance * (dose + stabiliser + beerSolids);
  },
});
