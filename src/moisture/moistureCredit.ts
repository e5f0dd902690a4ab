import { calculation } from '../core/calculation.js';
import { mass, moisture, price } from '../quantities.js';

/** A blank may come as 0, and a claim against nothing agreed or found is no claim: so nothing here may be 0. */
const stated = { ...moisture, limit: [0.001, 0.999], usual: [0.001, 0.7] } as const;

export const moistureCredit = calculation({
  id: 'MOISTURECREDIT',
  summary: 'Money that a delivery moister than agreed is worth less.',
  question: 'The delivery was moister than agreed: what does the supplier owe?',
  inputs: {
    mass: { ...mass, limit: [0.001, 1e7] },
    price: { ...price, limit: [1e-6, 1e7] },
    agreedMoisture: { ...stated, label: 'Agreed moisture', help: 'Moisture in the contract (wet basis).' },
    foundMoisture: { ...stated, label: 'Found moisture', help: 'Moisture of your sample (wet basis).' },
  },
  output: { kind: 'number', label: 'Credit', unit: 'money' },
  method: 'mass × price × (1 − (1 − found moisture) / (1 − agreed moisture)); positive: the supplier owes it',
  sources: ['Balance of dry matter; billing by dry matter as for air-dry tonnes.'],
  example: { given: { mass: 1000, price: 2.4, agreedMoisture: 0.6, foundMoisture: 0.65 }, result: 300 },
  compute: ({ mass, price, agreedMoisture, foundMoisture }) =>
    (mass * price * (foundMoisture - agreedMoisture)) / (1 - agreedMoisture),
});
