import type { Calculation } from '../core/calculation.js';
import { call } from './formula.js';
import type { At } from './layout.js';

/** What an argument is: a number, or the name of a place. */
export type Figure = number | string;

/** Places side by side as one range. */
export const spanOf = (places: readonly string[]): string =>
  places.length === 1 ? (places[0] as string) : `${places[0]}:${places[places.length - 1]}`;

/** What stands for an input that is not read but stands before one that is. */
function presetOf(calculation: Calculation, key: string): string {
  const input = calculation.inputs[key];
  const preset = input && 'preset' in input ? input.preset : undefined;
  if (typeof preset !== 'number') throw new Error(`${calculation.id} needs ${key}.`);
  return String(preset);
}

/** A call with the named places, in the order of the calculation’s inputs. */
export function callOf(calculation: Calculation, reads: Readonly<Record<string, Figure>>, at: At): string {
  const keys = Object.keys(calculation.inputs);
  const last = keys.findLastIndex((key) => key in reads);
  return call(
    calculation.id,
    keys.slice(0, last + 1).map((key) => {
      const read = reads[key];
      if (read === undefined) return presetOf(calculation, key);
      return typeof read === 'number' ? String(read) : at(read);
    }),
  );
}
