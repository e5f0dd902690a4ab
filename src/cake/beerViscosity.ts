import { calculation } from '../core/calculation.js';
import { toSI } from '../core/units.js';
import { waterViscosityAt } from '../numerics/water.js';
import { temperature, viscosity } from '../quantities.js';
import { IAPWS_SOURCE } from './water.js';

const LABORATORY = toSI(20, '°C');

export const beerViscosity = calculation({
  id: 'BEERVISCOSITY',
  summary:
    'Approximate viscosity of beer at filter temperature, from the laboratory’s figure at 20 °C. Below 20 °C it reads low.',
  question: 'The laboratory measured at 20 °C: how viscous is the beer, about, at the filter?',
  inputs: {
    temperature: { ...temperature, help: 'Of the beer at the filter.' },
    viscosityAt20: {
      ...viscosity,
      label: 'Viscosity at 20 °C',
      usual: [1.4, 2],
      help: 'Dynamic viscosity of the beer measured at 20 °C.',
      source: 'Usual range from memory: lager of 12 °P 1.5–1.7 mPa·s at 20 °C, stronger beers more.',
    },
  },
  output: { kind: 'number', label: 'Beer viscosity', unit: 'mPa·s' },
  method:
    'viscosity at 20 °C × water’s viscosity at the temperature / water’s at 20 °C. Approximate: alcohol and extract thicken beer more than water on cooling, so below 20 °C the answer is too low, the more so the stronger the beer, and above 20 °C too high. Measure at filter temperature where it matters',
  sources: [
    IAPWS_SOURCE,
    'Direction of the error: 10 % ethanol in water by mass is 1.53 times as viscous as water at 20 °C but 1.85 times at 0 °C (Bingham and Jackson’s table of ethanol–water mixtures).',
  ],
  example: { given: { temperature: 0, viscosityAt20: 1.6 }, result: 2.862_365_803_130_592_7 },
  compute: ({ temperature, viscosityAt20 }) =>
    (viscosityAt20 * waterViscosityAt(temperature)) / waterViscosityAt(LABORATORY),
});
