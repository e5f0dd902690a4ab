import { dryMass } from '../../moisture/dryMass.js';
import { moistureCredit } from '../../moisture/moistureCredit.js';
import { ovenMoisture } from '../../moisture/ovenMoisture.js';
import { gap, heading, type Line } from '../layout.js';
import { nowOf } from '../scenario.js';
import { input, result } from './lines.js';

export const deliveryLines: readonly Line[] = [
  heading('Moisture credit on a delivery'),
  input('deliveryMass', moistureCredit, 'mass', 10_000),
  input('deliveryPrice', moistureCredit, 'price', nowOf('stabiliserPrice')),
  input('agreedMoisture', moistureCredit, 'agreedMoisture', nowOf('stabiliserMoisture')),
  input('wetSample', ovenMoisture, 'wetSample', 20, { digits: 2 }),
  input('drySample', ovenMoisture, 'drySample', 6.6, { digits: 2 }),
  input('tare', ovenMoisture, 'tare', 0, { digits: 2 }),
  result('foundMoisture', ovenMoisture, { wetSample: 'wetSample', drySample: 'drySample', tare: 'tare' }),
  result('deliveryDry', dryMass, { mass: 'deliveryMass', moisture: 'foundMoisture' }),
  result(
    'deliveryCredit',
    moistureCredit,
    {
      mass: 'deliveryMass',
      price: 'deliveryPrice',
      agreedMoisture: 'agreedMoisture',
      foundMoisture: 'foundMoisture',
    },
    { digits: 2 },
  ),
  gap,
];
