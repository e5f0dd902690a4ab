import * as z from 'zod';
import { dryMass } from '../../src/moisture/dryMass.js';
import { dryPrice } from '../../src/moisture/dryPrice.js';
import { schemaOf } from '../../src/schema.js';
import type { Bound } from './builtFunctions.js';
import type { Comparison } from './timing.js';

const CALLS = 20_000;

// Cells that differ from call to call, or the compiler would take the work out of the loop.
const cells = Array.from({ length: 64 }, (_, index): [[number]] => [[100 + index]]);
let turn = 0;
const next = (): [[number]] => cells[turn++ & 63]!;

/** The limits that the declarations state, as an object of the full zod, and the same arithmetic. */
const [massLimit, moistureLimit] = [dryMass.inputs.mass.limit, dryMass.inputs.moisture.limit];
const massAndMoisture = z.object({
  mass: z.number().min(massLimit[0]).max(massLimit[1]),
  moisture: z.number().min(moistureLimit[0]).max(moistureLimit[1]),
});
const zodDryMass = (mass: unknown, moisture: unknown) => {
  const { success, data } = massAndMoisture.safeParse({ mass, moisture });
  return [[success ? data.mass * (1 - data.moisture) : Number.NaN]];
};

const derived = schemaOf(dryMass);
const derivedDryMass = (mass: unknown, moisture: unknown) => {
  const { success, data } = derived.safeParse({ mass, moisture });
  return [[success ? (data.mass as number) * (1 - (data.moisture as number)) : Number.NaN]];
};

/** One cell's call, as the host makes it: cells in, cells out. */
export function calls(fn: (id: string) => Bound): Comparison[] {
  const bound = fn(dryMass.id);
  const price = fn(dryPrice.id);
  const work = () => bound(next(), [[0.65]], {});
  const one = { calls: CALLS, work };
  return [
    {
      ...one,
      title: 'DRYMASS, one cell',
      reference: 'bare arithmetic, cells in and out',
      bare: () => [[next()[0][0] * (1 - 0.65)]],
    },
    { ...one, title: 'DRYMASS, one cell', reference: 'zod object', bare: () => zodDryMass(next()[0][0], 0.65) },
    {
      ...one,
      title: 'DRYMASS, one cell',
      reference: 'the derived zod/mini schema of forms',
      bare: () => derivedDryMass(next()[0][0], 0.65),
    },
    {
      calls: CALLS,
      title: 'DRYPRICE, one cell, refused',
      reference: 'zod object that refuses',
      work: () => price(next(), [[65]], {}),
      bare: () => zodDryMass(next()[0][0], 65),
    },
  ];
}

/** The same validation by a zod object, row by row. */
export const zodColumn = (masses: readonly number[][], moistures: readonly number[][]) => () =>
  masses.map((row, index) => zodDryMass(row[0], moistures[index]![0])[0]!);
