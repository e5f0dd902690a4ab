import type { SheetCondition } from '../../src/sheets/sheet.js';

interface JudgedLook {
  readonly color: string;
  readonly fill: string;
  readonly bold: boolean;
  readonly italic: boolean;
}

/** How a figure looks that is not usual: never by colour alone, and the words stand on the sheet. */
export const JUDGED_LOOKS: Readonly<Record<SheetCondition['look'], JudgedLook>> = {
  refused: { color: '#8a1f11', fill: '#ffcfc4', bold: true, italic: false },
  unusual: { color: '#5c3b00', fill: '#ffd98a', bold: false, italic: true },
  example: { color: '#4b3f72', fill: '#e9e4f7', bold: false, italic: true },
};

/** In the order in which they win over each other. */
export const LOOK_NAMES = Object.keys(JUDGED_LOOKS) as readonly SheetCondition['look'][];

/** Which look a fill is of, where it is one of ours. */
export const lookOfFill = (fill: string | undefined): SheetCondition['look'] | undefined =>
  LOOK_NAMES.find((look) => JUDGED_LOOKS[look].fill === fill);
