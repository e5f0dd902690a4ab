import type { Claim, Tally } from './claim.js';
import { logClaims } from './logs.js';
import { planClaims } from './plans.js';
import { pointClaims } from './points.js';
import { powderClaims } from './powders.js';

/** Everything that a function states of its own certainty, each tried on made cases. */
export const CLAIMS: readonly Claim[] = [...logClaims, ...pointClaims, ...powderClaims, ...planClaims];

/** Between these a claim of 95 % counts as held; one of 90 % between shares whose misses are as many times its own. */
const HELD = [0.9, 0.98] as const;

/** A verdict may be right more often than claimed: it is silent where it cannot tell. */
const isVerdict = (figure: string): boolean => /verdict|“/.test(figure);

/** What a tally comes to. */
export function judged(
  { claimed }: Claim,
  { figure, held }: Tally,
): 'cannot be known' | 'held' | 'more than claimed' | 'NOT HELD' {
  if (held === undefined) return 'cannot be known';
  const [least, most] = HELD.map((share) => 1 - ((1 - claimed) * (1 - share)) / 0.05) as [number, number];
  if (held < least) return 'NOT HELD';
  return held > most && !isVerdict(figure) ? 'more than claimed' : 'held';
}
