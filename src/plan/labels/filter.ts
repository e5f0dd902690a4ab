import type { Unit } from '../../core/units.js';
import { area, cakeLoad, flow, precoatLoad, septumRadius, viscosity } from '../../quantities.js';
import { SLIPS } from '../../quantity.js';
import { planLabel } from './planLabel.js';

const group = 'filter';

const pressure = {
  unit: 'bar',
  limit: [0, 100],
  help: 'Inlet less outlet.',
} as const;

const FOLLOWS = 'The start then follows the plan’s own; 0 or blank leaves it as it is.';

/** A quantity of which 0 says that there is none. */
const readAt = <
  const Q extends { readonly unit: Unit; readonly limit: readonly [number, number] },
  const L extends string,
>(
  { unit, limit: [, most] }: Q,
  label: L,
) => ({ unit: unit as Q['unit'], limit: [0, most] as const, label, group, preset: 0, source: SLIPS }) as const;

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
  leastFlow: planLabel({
    ...readAt(flow, 'Least flow'),
    help: 'At the pressure drop limit the flow is turned down to this, then the run ends; 0 or blank ends it at the limit.',
  }),
  startFlow: planLabel({
    ...readAt(flow, 'Start read at flow'),
    help: `Beer flow at which the start pressure drop was read. ${FOLLOWS}`,
  }),
  startViscosity: planLabel({
    ...readAt(viscosity, 'Start read at viscosity'),
    help: `Viscosity of the beer when the start pressure drop was read. ${FOLLOWS}`,
  }),
  startPrecoat: planLabel({
    ...readAt(precoatLoad, 'Start read at precoat'),
    help: `Precoat load under which the start pressure drop was read; needs Aid permeability. ${FOLLOWS}`,
  }),
} as const;
