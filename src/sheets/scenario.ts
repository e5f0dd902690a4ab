import type { PlanLabel } from '../core/input.js';
import { examplePlan } from '../plan/example.js';
import { SWAP_EXAMPLE } from '../plan/swapExample.js';
import { PLAN } from '../plan/table.js';
import type { PlanKey } from './planLines.js';

/** What every sheet says of the figures that it comes with. */
export const INVENTED_SCENARIO =
  'Nebbelgrund brewery, its beers, filters, powders, suppliers and all their figures are invented. The four starter sheets tell one and the same case.';

export const HOW_TO_READ =
  'Framed cells on a light ground are inputs: put your own figures there, and in the column beside them where each comes from. Everything else is calculated; money is in whatever currency your sheet uses.';

export const KIND_NOW = 'hydrogel';
export const KIND_PROPOSED = 'adsorptive';

/** Filter 2 is a little smaller than the filter of the functions’ examples, at the same flux. */
const OF_FILTER_2 = { area: 48, flow: 240 };

const byKey = (values: Readonly<Record<string, number>>): Readonly<Partial<Record<PlanKey, number>>> =>
  Object.fromEntries(
    (Object.keys(PLAN) as PlanKey[]).flatMap((key) => {
      const value = values[PLAN[key].label];
      return value === undefined ? [] : [[key, value]];
    }),
  );

const present = byKey(examplePlan(OF_FILTER_2));
const proposed = byKey(SWAP_EXAMPLE.proposed);

function figure(figures: Readonly<Partial<Record<PlanKey, number>>>, key: PlanKey): number {
  const label: PlanLabel = PLAN[key];
  const value = figures[key] ?? label.preset;
  if (value === undefined) throw new Error(`The case has no figure for ${label.label}.`);
  return value;
}

/** The case in figures: beer 3 on filter 2 with the present powders. */
export const nowOf = (key: PlanKey): number => figure(present, key);

/** The same with the proposed stabiliser. */
export const proposedOf = (key: PlanKey): number => figure(proposed, key);

/** Labels that the case does without: permeabilities stand for the resistance, and the start is that of the plan itself. */
const LEFT_OUT: readonly PlanKey[] = [
  'cakeResistance',
  'leastFeed',
  'leastFlow',
  'startFlow',
  'startViscosity',
  'startPrecoat',
];

/** Everything that a plan of the case states. */
export const STATED = (Object.keys(PLAN) as PlanKey[]).filter((key) => !LEFT_OUT.includes(key));
