import { rankQuotes } from '../../cost/rankQuotes.js';
import { standsAbove } from '../block.js';
import { declaredInput } from '../cells.js';
import type { Block } from '../list.js';
import { CALCULATED } from './calculated.js';
import { GIVEN } from './given.js';
import { OFFERS } from './offers.js';
import { ranked } from './ranking.js';

/** Offers that the list has room for. */
const ROOM = 200;

/** Offers of powder, one a row. */
export const offerList: Block = {
  name: 'quotes',
  what: 'offer',
  room: ROOM,
  given: [
    { key: 'name', label: 'Offer', help: rankQuotes.inputs.names.help },
    ...GIVEN.map(({ key, label, feeds, digits, mayBeBlank }) => ({
      ...{ key, label, declared: declaredInput(...feeds) },
      ...(digits === undefined ? {} : { digits }),
      ...(mayBeBlank ? { mayBeBlank } : {}),
    })),
  ],
  calculated: CALCULATED,
  examples: OFFERS.map((offer) => ({ ...offer })),
  told: [
    ['name', 'packPrice', 'packMass'],
    ['kind', 'freight', 'discount', 'duty', 'loss', 'moisture', 'ownDose'],
  ],
  beside: ranked(ROOM),
  rules: (column) => [
    ['refused', `${column('packPrice')}=0`, 'packPrice', 'Pack price is 0: no offer is free.'],
    ['unusual', standsAbove(column('name')), 'name', 'stands further up as well: both are ranked.'],
  ],
};
