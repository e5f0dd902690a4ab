import type { PlanLabel } from '../../core/input.js';

/** Takes a quantity's declaration into the plan: what says how a cell holds it stays behind. */
export function planLabel<const L extends PlanLabel & { readonly kind?: 'number' }>(declared: L): Omit<L, 'kind'> {
  const { kind: _, ...label } = declared;
  return label;
}
