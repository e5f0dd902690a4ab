import { beerSolids, bodyFeed, dose, moisture, precoatLoad } from '../../quantities.js';
import { planLabel } from './planLabel.js';

const group = 'powder';

/** What goes on the filter. Doses are as bought, beer solids dry. */
export const powderLabels = {
  precoatLoad: planLabel({ ...precoatLoad, group }),
  bodyFeed: planLabel({ ...bodyFeed, group, askedAtZero: true }),
  aidMoisture: planLabel({
    ...moisture,
    group,
    label: 'Filter aid moisture',
    usual: [0, 0.05],
    preset: 0,
    help: 'Of precoat and body feed, share of the mass as bought (wet basis).',
    source:
      'Usual range: loss on drying up to 0.5 % (USP-NF, purified siliceous earth); more where it was stored damp.',
  }),
  stabiliserDose: planLabel({
    ...dose,
    group,
    label: 'Stabiliser dose',
    usual: [0, 150],
    help: 'As bought, for each hL of beer; 0 where none is used.',
  }),
  stabiliserMoisture: planLabel({ ...moisture, group, label: 'Stabiliser moisture' }),
  stabiliserRemoved: planLabel({
    group,
    label: 'Stabiliser removed before filter',
    unit: 'fraction',
    limit: [0, 1],
    preset: 0,
    help: 'Share that settles and leaves with the yeast, so that it never reaches the filter.',
    source: 'A share lies between 0 and 1.',
  }),
  beerSolids: planLabel({
    ...beerSolids,
    group,
    limit: [0.5, 5000],
    help: 'Dry yeast and haze that each hL of beer brings to the cake; never 0. SOLIDSLOAD reckons it from a cell count.',
  }),
  leastFeed: planLabel({
    group,
    label: 'Least body feed for clarity',
    unit: bodyFeed.unit,
    limit: bodyFeed.limit,
    preset: 0,
    help: 'Below which the beer is not clear enough (FITCLARITY): BESTFEED and FEEDFORRUN go no lower; 0 or blank is none.',
    source: 'The limits only keep out slips of the keyboard; the figure is your own.',
  }),
} as const;
