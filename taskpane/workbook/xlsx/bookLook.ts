import type { Look } from '../../host/looks.js';

/** Kinds of lines by the words of the file format, in the order in which the grid's engine counts them from 1 on. */
export const LINE_STYLES = [
  ...(['thin', 'hair', 'dotted', 'dashed', 'dashDot', 'dashDotDot', 'double', 'medium'] as const),
  ...(['mediumDashed', 'mediumDashDot', 'mediumDashDotDot', 'slantDashDot', 'thick'] as const),
] as const;

export const SIDES = ['left', 'right', 'top', 'bottom'] as const;

export interface Line {
  readonly style: (typeof LINE_STYLES)[number];
  /** As #rrggbb. */
  readonly color: string;
}

/** How a cell of a file looks: as on a starter sheet, and all that a grid can show besides. */
export interface BookLook extends Omit<Partial<Look>, 'border' | 'underline'> {
  /** The name of the font, where it is not the usual one. */
  readonly font?: string;
  readonly underlined?: 'single' | 'double';
  readonly struck?: true;
  readonly raised?: 'superscript' | 'subscript';
  readonly lines?: Readonly<Partial<Record<(typeof SIDES)[number], Line>>>;
}

/** Where the content of a cell stands, as far as it is not the usual place. */
export interface Alignment {
  readonly across?: 'left' | 'center' | 'right' | 'justify';
  readonly down?: 'top' | 'center' | 'bottom';
  readonly wrap?: true;
  /** Degrees upwards from the level, or letters below each other. */
  readonly turned?: number | 'stacked';
}
