import { nowOf } from '../scenario.js';

export interface Offer {
  readonly name: string;
  readonly kind: string;
  readonly packPrice: number;
  readonly packMass: number;
  readonly freight: number;
  readonly discount: number;
  readonly duty: number;
  readonly loss: number;
  readonly moisture: number;
  /** From a ladder on the own beer, as bought; where there is none the swap factors stand in. */
  readonly ownDose?: number;
}

const offer = (
  name: string,
  kind: string,
  [packPrice, packMass, freight]: readonly [number, number, number],
  [discount, duty, loss]: readonly [number, number, number],
  moisture: number,
  ownDose?: number,
): Offer => ({
  name,
  kind,
  packPrice,
  packMass,
  freight,
  discount,
  duty,
  loss,
  moisture,
  ...(ownDose ? { ownDose } : {}),
});

/** The first is the present powder at its present price; the third the proposed one, as the other sheets have them. */
export const OFFERS: readonly Offer[] = [
  offer('Gel 65 from supplier 1', 'hydrogel', [1140, 500, 0.12], [0, 0, 0], nowOf('stabiliserMoisture')),
  offer('Gel 62 from supplier 2', 'hydrogel', [1275, 500, 0.14], [0.05, 0, 0.01], 0.62),
  offer('Aid B from supplier 3', 'adsorptive', [1000, 400, 0.15], [0, 0.06, 0], 0.01),
  offer('Aid B in bags from supplier 4', 'adsorptive', [52, 20, 0.09], [0.03, 0.06, 0.02], 0.015),
  offer('Dry gel 5 from supplier 1', 'xerogel', [2350, 400, 0.12], [0.08, 0, 0], 0.05),
  offer('Dry gel 5 from supplier 5', 'xerogel', [108, 20, 0.2], [0, 0.04, 0.02], 0.05, 24),
  offer('Dry gel 10 from supplier 2', 'xerogel', [2150, 400, 0.14], [0.05, 0, 0.01], 0.1),
  offer('Gel 68 from supplier 6', 'hydrogel', [920, 450, 0.11], [0, 0.04, 0], 0.68),
  offer('Gel 65 pallet from supplier 6', 'hydrogel', [2020, 900, 0.1], [0.02, 0.04, 0], 0.65),
];
