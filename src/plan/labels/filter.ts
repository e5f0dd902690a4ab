import { area, cakeLoad, flow, septumRadius, viscosity } from '../../quantities.js';
import { planLabel } from './planLabel.js';

const group = 'filter';

const pressure = {
  unit: 'bar',
  limit: [0, 100],
  help: 'Inlet less outlet.',
} as const;

/** The filter as it stands, and the beer that runs through it. */
export const filterLabels = {
  area: planLabel({ ...area, group }),
  flow: planLabel({ ...flow, group, label: 'Beer flow', help: 'Held through the whole run.' }),
  viscosity: planLabel({ ...viscosity, group, label: 'Viscosity at filter' }),
  startPressure: planLabel({
    ...pressure,
    group,
    label: 'Start pressure drop',
    usual: [0.1, 1],
    help: 'Inlet less outlet when the first beer runs: septum, precoat and pipework together.',
    source: 'Usual range: common practice, no source.',
  }),
  pressureLimit: planLabel({
    ...pressure,
    group,
    label: 'Pressure drop limit',
    usual: [2, 8],
    help: 'Inlet less outlet at which the run is ended. The vessel’s plate comes before it.',
    source:
      'Usual range from memory of brewing textbooks: frames 4–5, leaf filters 5–6, candles 6–8 bar; drinking-water practice 2.07 bar (Idaho 58.01.08.522).',
  }),
  cakeSpace: planLabel({
    ...cakeLoad,
    group,
    label: 'Cake space',
    limit: [0.001, 1000],
    usual: [3, 9],
    help: 'Dry solids that fit on each m² of septum, precoat included. Facing cakes share the gap between them.',
    source: 'Usual range derived from 20–30 mm between facing cakes at 300 kg/m³: 3–4.5 a side, 6–9 one-sided.',
  }),
  septumRadius: planLabel({ ...septumRadius, group }),
  runLimit: planLabel({
    group,
    label: 'Run limit',
    unit: 'hL',
    limit: [0, 1e6],
    preset: 0,
    help: 'The most beer that tank, schedule or hygiene allows in one run; 0 or blank is none.',
    source: 'The limits only keep out slips of the keyboard; the figure is your own.',
  }),
} as const;
