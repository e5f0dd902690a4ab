import type { Unit } from '../../../src/core/units.js';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What is measured along one side of a picture. Title and unit come from the declaration. */
export interface Axis {
  readonly label: string;
  readonly unit: Unit;
  readonly logarithmic?: true;
  /** Takes the axis down, or up, to 0. */
  readonly fromZero?: true;
  /** Keeps room above for what is said there. */
  readonly headroom?: true;
}

/** Series that are told apart, by more than their colours. */
export type SeriesSet = 0 | 1 | 2 | 3;

/** What is drawn into a panel; all numbers in the units of its axes. */
export type Mark =
  | { readonly kind: 'curve'; readonly points: readonly Point[]; readonly set?: SeriesSet }
  | { readonly kind: 'dots'; readonly points: readonly Point[]; readonly set?: SeriesSet }
  /** Rectangles that stand on 0, side by side. */
  | { readonly kind: 'columns'; readonly columns: readonly { from: number; to: number; height: number }[] }
  /** A line across, such as a limit. */
  | { readonly kind: 'level'; readonly at: number; readonly text?: string }
  /** A line upright; its text stands at the foot or at the head of the panel. A plain one only marks a place. */
  | {
      readonly kind: 'upright';
      readonly at: number;
      readonly text: string;
      readonly end: 'foot' | 'head';
      readonly plain?: true;
    }
  | { readonly kind: 'spot'; readonly at: Point };

export interface Panel {
  readonly y: Axis;
  /** Share of the usual height. */
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** A line of bars that begin at one value and end at another; which of the sets each belongs to shows. */
export interface BarLine {
  readonly label: string;
  /** Said at the end of the line. */
  readonly note?: string;
  readonly bars: readonly { readonly set: SeriesSet; readonly from: number; readonly to: number }[];
}

export interface Bars {
  readonly axis: Axis;
  /** What the sets of bars are; no names where there is but one. */
  readonly sets: readonly string[];
  readonly lines: readonly BarLine[];
  readonly level?: { readonly at: number; readonly text: string };
}

/** A sentence under the picture; those of the library are English in every language. */
export interface Note {
  readonly text: string;
  readonly english?: true;
}

export interface Column {
  readonly label: string;
  readonly unit: Unit;
}

/** What a line or the points of a panel are. */
export interface LegendEntry {
  readonly text: string;
  readonly kind: 'curve' | 'dots';
  readonly set: SeriesSet;
}

interface Shared {
  readonly title: string;
  /** What the picture shows, in sentences: for those who do not see it. */
  readonly summary: string;
  readonly notes: readonly Note[];
  readonly table: {
    readonly columns: readonly Column[];
    readonly rows: readonly (readonly (number | string)[])[];
  };
}

/** Everything that is drawn and said, free of size and colour. */
export type Picture = Shared &
  (
    | { readonly x: Axis; readonly panels: readonly Panel[]; readonly legend?: readonly LegendEntry[] }
    | { readonly bars: Bars }
  );
