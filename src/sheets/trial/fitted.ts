import { cakePressure } from '../../cake/cakePressure.js';
import { call } from '../formula.js';
import type { At } from '../layout.js';

export const SIDES = ['old', 'new'] as const;
export const BOTH = [0, 1] as const;
export type Run = (typeof SIDES)[number];
type Which = (typeof BOTH)[number];

/** The names of both runs’ figures. */
export const both = (key: string) => SIDES.map((side) => `${side}${key}`);

/** The septum on which the cake grows, as FITRUN and CAKEPRESSURE take it. */
export const SEPTUM = ['trialRadius', 'trialDensity', 'trialDryPrecoat'] as const;

/** Fitted pressure drop after so much beer: the start, and the cake that was laid since. */
export const fittedAt = (at: At, run: Which, volume: string): string => {
  const side = SIDES[run];
  const load = `${at(`${side}Solids`)}/1000*${volume}/${at('trialArea')}`;
  const flowing = [at(`${side}Flux`), at(`${side}Viscosity`), load, at(`fit.resistance.${run}`), '0', '0'];
  return `${at(`fit.start.${run}`)}+${call(cakePressure.id, [...flowing, ...SEPTUM.map(at)])}`;
};
