import { compressibility } from '../../cake/inputs.js';
import { cakeDensity, cakeResistance, permeability } from '../../quantities.js';
import { planLabel } from './planLabel.js';

const group = 'cake';

const TOGETHER = 'Fit it together with the other permeabilities (FITFEED), from your own runs.';

/** How the cake resists: one fitted resistance of this very mix, or the permeability of each part. */
export const cakeLabels = {
  cakeDensity: planLabel({
    ...cakeDensity,
    group,
    help: 'Dry solids in each m³ of wet cake; one figure serves the whole cake.',
  }),
  cakeResistance: planLabel({
    ...cakeResistance,
    group,
    usual: [1e11, 5e11],
    help: 'Fitted on a run with this very mix (FITRUN); where the cake is compressible, Resistance at 1 bar (FITCAKE). In place of the permeabilities.',
    source:
      'Usual range derived from 0.2–0.4 bar/h at 5 hL/(m² h), 2 mPa·s and 100 g/hL, which is 1.4e11–2.9e11 m/kg; those rates are common practice, no source.',
    optional: true,
  }),
  compressibility: planLabel({ ...compressibility, group }),
  aidPermeability: planLabel({
    ...permeability,
    group,
    label: 'Aid permeability',
    help: `Of the clean filter aid in the cake. ${TOGETHER}`,
    optional: true,
  }),
  beerSolidsPermeability: planLabel({
    ...permeability,
    group,
    label: 'Beer solids permeability',
    help: `Of yeast and haze in the cake, far below any powder’s. ${TOGETHER}`,
    optional: true,
  }),
  stabiliserPermeability: planLabel({
    ...permeability,
    group,
    label: 'Stabiliser permeability',
    help: 'Of the stabiliser in the cake, from a log before and after a swap (PARTPERMEABILITY); needed wherever its dose is above 0.',
    optional: true,
  }),
} as const;
