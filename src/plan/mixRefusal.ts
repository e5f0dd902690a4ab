import { labelsInWords } from './cakeRefusal.js';
import type { RunPlan } from './input.js';

const STABILISER = ['stabiliserDose', 'stabiliserMoisture', 'stabiliserRemoved'] as const;
const MIX = ['bodyFeed', 'beerSolids', ...STABILISER] as const;

const stabiliserInCake = ({ stabiliserDose, stabiliserRemoved }: RunPlan): boolean =>
  stabiliserDose > 0 && stabiliserRemoved < 1;

/** What makes the powder mix of one plan another one's. */
function differing(one: RunPlan, other: RunPlan): readonly (typeof MIX)[number][] {
  const counts = stabiliserInCake(one) || stabiliserInCake(other) ? MIX : MIX.slice(0, 2);
  return counts.filter((key) => one[key] !== other[key]);
}

const verb = (keys: readonly unknown[], one: string, many: string): string => (keys.length > 1 ? many : one);

const FITTED = 'which holds only for the powder mix that it was fitted on';
const PERMEABILITIES = 'Give permeabilities in its place (FITFEED)';

/** A resistance was fitted on one mix: a range of mixes at one resistance would invent what they cost. */
export function variedMixRefusal(low: RunPlan, high: RunPlan, name = ''): string | undefined {
  const keys = low.cakeResistance === undefined ? [] : differing(low, high);
  if (keys.length === 0) return undefined;
  const said = labelsInWords(keys);
  return `${said} ${verb(keys, 'is', 'are')} varied${name} at one Cake resistance, ${FITTED}, so the answer would be invented. ${PERMEABILITIES}, or hold ${said}.`;
}

/** Two mixes at one resistance would invent a saving. */
export function comparedMixRefusal(present: RunPlan, proposed: RunPlan): string | undefined {
  const shared = present.cakeResistance !== undefined && present.cakeResistance === proposed.cakeResistance;
  const keys = shared ? differing(present, proposed) : [];
  if (keys.length === 0) return undefined;
  return `${labelsInWords(keys)} ${verb(keys, 'differs', 'differ')} between Present and Proposed at one and the same Cake resistance, ${FITTED}, so the saving would be invented. ${PERMEABILITIES}, or each plan its own Cake resistance, fitted on its own mix (FITRUN).`;
}
