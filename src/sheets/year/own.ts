import type { PlanKey } from '../planLines.js';
import type { Beer } from './beers.js';

export interface Given {
  readonly key: keyof Beer & PlanKey;
  /** Which of a pair; both sides share the figure where it is no pair. */
  readonly side?: 0 | 1;
}

/** What each beer states for itself. */
export const GIVEN: readonly Given[] = [
  { key: 'yearVolume' },
  { key: 'viscosity' },
  { key: 'beerSolids' },
  { key: 'bodyFeed', side: 0 },
  { key: 'stabiliserDose', side: 0 },
  { key: 'bodyFeed', side: 1 },
  { key: 'stabiliserDose', side: 1 },
];

export const SAID = ['now', 'proposed'] as const;
/** Where a plan finds a beer’s own figure; nothing where all beers share it. */
export function ownFigure(key: PlanKey, side: number, beer: number): string | undefined {
  const found = GIVEN.find((given) => given.key === key && (given.side ?? side) === side);
  return found && `beers.${key}.${found.side ?? 'both'}.${beer}`;
}

export const ownValue = (beer: Beer, { key, side }: Given): number => {
  const value = beer[key];
  return typeof value === 'number' ? value : value[side ?? 0];
};
