import { bodyFeed } from '../../feed/bodyFeed.js';
import { chargeHours } from '../../feed/chargeHours.js';
import { feedAfterSwap } from '../../feed/feedAfterSwap.js';
import { precoatMass } from '../../feed/precoatMass.js';
import { pumpRate } from '../../feed/pumpRate.js';
import { slurryWater } from '../../feed/slurryWater.js';
import { contactTank } from '../../stabiliser/contactTank.js';
import { contactTime } from '../../stabiliser/contactTime.js';
import { gap, heading, type Line } from '../layout.js';
import { nowOf } from '../scenario.js';
import { computed, input, result } from './lines.js';

const SLURRY = { powder: 'chargePowder', strength: 'strength', density: 'powderDensity' } as const;

export const feedLines: readonly Line[] = [
  heading('Body feed'),
  input('flow', bodyFeed, 'flow', nowOf('flow'), { label: 'Beer flow' }),
  input('feed', bodyFeed, 'dose', nowOf('bodyFeed'), { label: 'Present body feed', digits: 1 }),
  input(['', 'credit'], feedAfterSwap, 'credit', 0.6, { label: 'Share of it that works as a filter aid' }),
  input(['', 'leastFeed'], feedAfterSwap, 'least', 57, { digits: 1 }),
  result(['', 'proposedFeed'], feedAfterSwap, {
    feed: 'feed',
    stabiliser: 'newDose',
    credit: 'credit',
    least: 'leastFeed',
  }),
  result(['feedRate', 'newFeedRate'], bodyFeed, [
    { flow: 'flow', dose: 'feed' },
    { flow: 'flow', dose: 'proposedFeed' },
  ]),
  gap,
  heading('Precoat'),
  input('area', precoatMass, 'area', nowOf('area')),
  input('load', precoatMass, 'load', nowOf('precoatLoad')),
  result('precoat', precoatMass, { area: 'area', load: 'load' }),
  input('precoatStrength', slurryWater, 'strength', 100, { label: 'Strength of the precoat slurry' }),
  input('powderDensity', slurryWater, 'density', 2300, {
    from: 'From memory, dry silica powders lie near it; ask your supplier.',
  }),
  result(
    'precoatWater',
    slurryWater,
    { powder: 'precoat', strength: 'precoatStrength', density: 'powderDensity' },
    { label: 'Water to the precoat slurry' },
  ),
  gap,
  heading('Slurry make-up and dosing pump'),
  input('strength', slurryWater, 'strength', 120),
  input('tank', chargeHours, 'tank', 800),
  computed(
    'chargePowder',
    'Filter aid to a full slurry tank',
    (at) => `=${at('tank')}*${at('strength')}/1000`,
    'kg',
    'slurry tank × slurry strength',
  ),
  result('chargeWater', slurryWater, SLURRY, { label: 'Water to a full slurry tank' }),
  result(
    ['pump', 'newPump'],
    pumpRate,
    [
      { flow: 'flow', dose: 'feed', strength: 'strength' },
      { flow: 'flow', dose: 'proposedFeed', strength: 'strength' },
    ],
    { label: 'Dosing pump setting' },
  ),
  result(['charge', 'newCharge'], chargeHours, [
    { tank: 'tank', pump: 'pump' },
    { tank: 'tank', pump: 'newPump' },
  ]),
  gap,
  heading('Buffer tank before the filter'),
  input(['contact', 'newContact'], contactTank, 'contact', [20, 5], {
    label: 'Contact time needed',
    from: 'Your supplier and your own ladder say what the gel needs.',
  }),
  result(
    ['buffer', 'newBuffer'],
    contactTank,
    [
      { flow: 'flow', contact: 'contact' },
      { flow: 'flow', contact: 'newContact' },
    ],
    { label: 'Buffer tank needed' },
  ),
  input('bufferThere', contactTime, 'tank', 60, { label: 'Buffer tank that is there' }),
  result('contactThere', contactTime, { tank: 'bufferThere', flow: 'flow' }, { label: 'Contact time that it gives' }),
];
