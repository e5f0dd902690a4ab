import type { RangeReference } from '../../host/reference.js';

/** Kinds of finding, gravest first: the list stands in this order. */
export const KINDS = ['refused', 'error', 'percentage', 'dose', 'text', 'unusual', 'constant'] as const;
export type Kind = (typeof KINDS)[number];

/** One thing that deserves a look, and where it stands. */
export interface Finding {
  readonly kind: Kind;
  /** Where "go there" leads. */
  readonly place: RangeReference;
  /** The function and the input it is about; the error code of an error cell. */
  readonly subject: string;
  /** A sentence of the library, which is English; or the figures of which the pane makes its own. */
  readonly sentence?: string;
  readonly figures?: {
    readonly value: number;
    readonly unit: string;
    readonly other?: number;
    /** Further places that belong to it. */
    readonly places: readonly RangeReference[];
  };
}

export interface Checked {
  readonly findings: readonly Finding[];
  /** Formulas with functions of ours that were read. */
  readonly formulas: number;
}
