import { costPerHl } from '../../cost/costPerHl.js';
import { powderPerHl } from '../../cost/powderPerHl.js';
import { heading, type Line } from '../layout.js';
import { nowOf } from '../scenario.js';
import { computed, input, result } from './lines.js';

export const costLines: readonly Line[] = [
  heading('Powder cost'),
  input('aidPrice', costPerHl, 'price', nowOf('aidPrice'), { label: 'Filter aid price' }),
  result(
    ['aidPerHl', 'newAidPerHl'],
    powderPerHl,
    [
      { precoat: 'precoat', feed: 'feed', run: 'run.volume.0' },
      { precoat: 'precoat', feed: 'proposedFeed', run: 'run.volume.1' },
    ],
    { label: 'Filter aid in all' },
  ),
  result(
    ['aidCost', 'newAidCost'],
    costPerHl,
    [
      { dose: 'aidPerHl', price: 'aidPrice' },
      { dose: 'newAidPerHl', price: 'aidPrice' },
    ],
    { label: 'Filter aid cost' },
  ),
  result(
    ['presentCost', 'newCost'],
    costPerHl,
    [
      { dose: 'presentDose', price: 'presentPrice' },
      { dose: 'newDose', price: 'newPrice' },
    ],
    { label: 'Stabiliser cost' },
  ),
  computed(
    ['powderCost', 'newPowderCost'],
    'Filter aid and stabiliser',
    (at) => [`=${at('aidCost')}+${at('presentCost')}`, `=${at('newAidCost')}+${at('newCost')}`],
    'money/hL',
    'filter aid cost + stabiliser cost',
  ),
  computed(
    ['', 'powderSaved'],
    'Saved on powder',
    (at) => `=${at('powderCost')}-${at('newPowderCost')}`,
    'money/hL',
    'now − proposed; below 0 it gets dearer. Disposal, water and time: see the sheet Year',
  ),
];
