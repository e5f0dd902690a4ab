import type { Bounds, ChoiceInput } from '../core/input.js';

/** What a cell that a person fills in says of itself, whether it feeds one input or a plan. */
export type Declared = ChoiceInput | (Bounds & { readonly label: string; readonly help: string });

export const isChoice = (declared: Declared): declared is ChoiceInput => 'of' in declared;
