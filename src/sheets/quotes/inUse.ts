import { costPerHl } from '../../cost/costPerHl.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { FACTOR_SOURCE } from '../../stabiliser/factors.js';
import { swapDose } from '../../stabiliser/swapDose.js';
import { chosenLine, ofChosen } from '../chosenRow.js';
import { POSITION_FORMAT, referenceMoisture } from '../dosing/stabiliser.js';
import { gap, heading, type Line } from '../layout.js';
import { KIND_NOW, nowOf } from '../scenario.js';
import { columns, computed, input, result } from './lines.js';
import { offerList } from './offerList.js';
import { OFFERS } from './offers.js';

const offerLine = chosenLine(columns, offerList, {
  name: 'quoteOffer',
  label: 'Offer in use',
  example: OFFERS[0]?.name ?? '',
  help: 'The name of the offer that you buy at present, as it stands in the list below.',
  about: 'Its landed price is taken from the list below.',
  instead: { name: 'quoteOwnPrice', words: 'name one of the list, or type a price below.' },
});

export const inUseLines: readonly Line[] = [
  heading('The powder in use'),
  offerLine,
  input('quoteOwnPrice', costPerHl, 'price', undefined, {
    label: 'Landed price where no offer is named',
    from: 'Leave it empty where the powder in use is an offer of the list.',
    mayBeBlank: true,
  }),
  input('quoteKind', swapDose, 'fromKind', KIND_NOW, { label: 'Kind' }),
  input('quotePresentDose', swapDose, 'dose', nowOf('stabiliserDose'), {
    label: 'Dose as bought',
    digits: 1,
    help: 'Powder in use as bought, for each hL of beer; its moisture is reckoned with below.',
  }),
  input('quoteMoisture', sameSolids, 'moisture', nowOf('stabiliserMoisture')),
  input('quotePosition', swapDose, 'position', swapDose.inputs.position.preset, {
    label: 'Position in the factor range',
    from: 'Your own choice: 0 is the low end, 1 the high end.',
    format: POSITION_FORMAT,
  }),
  computed(
    'quotePrice',
    'Landed price',
    (at) => `=IF(LEN(${at('quoteOffer')})>0,${ofChosen(offerList, at, 'quoteOffer', 'landed')},${at('quoteOwnPrice')})`,
    'money/kg',
    'of the offer in use, or as typed where none is named',
  ),
  computed(
    'quoteUsualMoisture',
    'Moisture that the swap factors assume',
    (at) => `=${referenceMoisture(at('quoteKind'))}`,
    'fraction',
    FACTOR_SOURCE,
  ),
  result(
    'quoteDoseCorrected',
    sameSolids,
    { amount: 'quotePresentDose', moisture: 'quoteMoisture', newMoisture: 'quoteUsualMoisture' },
    { label: 'Dose at that moisture', unit: 'g/hL' },
  ),
  result('quotePresentCost', costPerHl, { dose: 'quotePresentDose', price: 'quotePrice' }),
  gap,
];
