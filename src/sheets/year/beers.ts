import { nowOf } from '../scenario.js';
import { RUNS } from '../trial/trialCase.js';

/** What differs from beer to beer; doses as bought. */
export interface Beer {
  readonly yearVolume: number;
  readonly viscosity: number;
  readonly beerSolids: number;
  readonly bodyFeed: readonly [now: number, proposed: number];
  readonly stabiliserDose: readonly [now: number, proposed: number];
}

const beer = (
  yearVolume: number,
  [viscosity, beerSolids]: readonly [number, number],
  bodyFeed: readonly [number, number],
  stabiliserDose: readonly [number, number],
): Beer => ({ yearVolume, viscosity, beerSolids, bodyFeed, stabiliserDose });

/** Ten invented beers on filter 2. Beer 3 is the one of the sheets Dosing and Trial log. */
export const BEERS: readonly Beer[] = [
  beer(140_000, [2.6, 22], [85, 57], [55, 47]),
  beer(95_000, [2.7, 24], [88, 60], [60, 51]),
  beer(70_000, [nowOf('viscosity'), nowOf('beerSolids')], RUNS.feed, RUNS.stabiliserDose),
  beer(52_000, [2.9, 28], [95, 66], [65, 56]),
  beer(40_000, [2.5, 20], [80, 54], [50, 43]),
  beer(33_000, [3.1, 32], [105, 75], [70, 60]),
  beer(26_000, [2.8, 26], [90, 63], [60, 52]),
  beer(20_000, [3.3, 36], [115, 88], [75, 65]),
  beer(14_000, [2.4, 18], [75, 52], [45, 38]),
  beer(10_000, [3.0, 30], [100, 74], [40, 34]),
];
