import { CAUTIONS } from '../cautions.js';
import { costPerHl } from '../cost/costPerHl.js';
import { powderPerHl } from '../cost/powderPerHl.js';
import { bodyFeed } from '../feed/bodyFeed.js';
import { chargeHours } from '../feed/chargeHours.js';
import { precoatMass } from '../feed/precoatMass.js';
import { pumpRate } from '../feed/pumpRate.js';
import { dryMass } from '../moisture/dryMass.js';
import { sameSolids } from '../moisture/sameSolids.js';
import { contactTank } from '../stabiliser/contactTank.js';
import { FACTOR_SOURCE, KINDS, REFERENCE_MOISTURE } from '../stabiliser/factors.js';
import { swapDose } from '../stabiliser/swapDose.js';
import { caution, columnTitles, gap, heading, input, layOut, note, result, title, worked } from './layout.js';

const referenceMoisture = (at: (name: string) => string): string =>
  `=${KINDS.reduceRight((rest, kind) => `IF(${at('presentKind')}="${kind}",${REFERENCE_MOISTURE[kind]},${rest})`, 'NA()')}`;

/** One beer on one filter: the stabiliser swapped, body feed, slurry, pump and powder cost. */
export const dosing = layOut(
  {
    key: 'dosing',
    name: 'Dosing',
    summary: 'One beer on one filter: stabiliser swap, precoat, body feed, pump setting and powder cost per hL.',
    headerRows: 3,
  },
  [
    title('Dosing sheet: beer 3 on filter 2, Nebbelgrund brewery'),
    note(
      'Brewery and figures are invented. Marked cells are inputs: put your own figures there. Everything else is calculated.',
    ),
    columnTitles,

    heading('The stabiliser now'),
    input('presentKind', swapDose, 'fromKind', 'hydrogel', { label: 'Present kind' }),
    input('presentDose', swapDose, 'dose', 80, { label: 'Present dose' }),
    input('presentMoisture', sameSolids, 'moisture', 0.62, { label: 'Present moisture' }),
    input('presentPrice', costPerHl, 'price', 2.4, { label: 'Present price', digits: 2 }),
    worked('usualMoisture', 'Moisture that the swap factors assume', referenceMoisture, 'fraction', FACTOR_SOURCE),
    result(
      'doseCorrected',
      sameSolids,
      { amount: 'presentDose', moisture: 'presentMoisture', newMoisture: 'usualMoisture' },
      { label: 'Present dose at that moisture', unit: 'g/hL' },
    ),
    gap,

    heading('The stabiliser proposed'),
    input('newKind', swapDose, 'toKind', 'adsorptive', { label: 'Proposed kind' }),
    input('position', swapDose, 'position', 0.5, { label: 'Position in the factor range' }),
    input('newPrice', costPerHl, 'price', 2.8, { label: 'Proposed price', digits: 2 }),
    result('newDose', swapDose, {
      dose: 'doseCorrected',
      fromKind: 'presentKind',
      toKind: 'newKind',
      position: 'position',
    }),
    result(
      'presentCost',
      costPerHl,
      { dose: 'presentDose', price: 'presentPrice' },
      { label: 'Stabiliser cost now', digits: 4 },
    ),
    result(
      'newCost',
      costPerHl,
      { dose: 'newDose', price: 'newPrice' },
      { label: 'Stabiliser cost proposed', digits: 4 },
    ),
    worked(
      'stabiliserSaved',
      'Saved on the stabiliser',
      (at) => `=${at('presentCost')}-${at('newCost')}`,
      'money/hL',
      'now less proposed; below 0 it gets dearer',
      4,
    ),
    gap,

    heading('Precoat and body feed'),
    input('area', precoatMass, 'area', 48),
    input('load', precoatMass, 'load', 800),
    input('flow', bodyFeed, 'flow', 260, { label: 'Beer flow' }),
    input('feed', bodyFeed, 'dose', 95),
    input('run', powderPerHl, 'run', 2300, { label: 'Run volume expected' }),
    input('aidPrice', costPerHl, 'price', 0.85, { label: 'Filter aid price', digits: 2 }),
    result('precoat', precoatMass, { area: 'area', load: 'load' }),
    result('feedRate', bodyFeed, { flow: 'flow', dose: 'feed' }),
    result('aidPerHl', powderPerHl, { precoat: 'precoat', feed: 'feed', run: 'run' }, { label: 'Filter aid in all' }),
    result('aidCost', costPerHl, { dose: 'aidPerHl', price: 'aidPrice' }, { label: 'Filter aid cost', digits: 4 }),
    gap,

    heading('Slurry and pump'),
    input('strength', pumpRate, 'strength', 120),
    input('tank', chargeHours, 'tank', 800),
    result('pump', pumpRate, { flow: 'flow', dose: 'feed', strength: 'strength' }, { label: 'Dosing pump setting' }),
    result('charge', chargeHours, { tank: 'tank', pump: 'pump' }),
    gap,

    heading('Contact before the filter'),
    input('contact', contactTank, 'contact', 5),
    result('buffer', contactTank, { flow: 'flow', contact: 'contact' }, { label: 'Buffer tank needed' }),
    gap,

    heading('Powder cost'),
    worked(
      'powderCost',
      'Filter aid and proposed stabiliser',
      (at) => `=${at('aidCost')}+${at('newCost')}`,
      'money/hL',
      'filter aid cost + stabiliser cost proposed',
      4,
    ),
    result(
      'dryDelivered',
      dryMass,
      { mass: 1000, moisture: 'presentMoisture' },
      {
        label: 'Dry powder in a tonne of the present stabiliser',
      },
    ),
    gap,

    heading('What to watch'),
    note('Equal dry silica is not equal effect: settle the dose by a ladder on your own beer.'),
    note('A stabiliser that also filters may allow less body feed; without that cut a swap seldom pays.'),
    caution(CAUTIONS.dust),
    caution(CAUTIONS.pressure),
  ],
);
