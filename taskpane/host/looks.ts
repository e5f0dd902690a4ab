import type { CellStyle } from './host.js';

/** How a kind of cell looks, in words that every host and file format knows. Colours are #rrggbb. */
export interface Look {
  readonly bold?: true;
  readonly italic?: true;
  /** In points. */
  readonly size?: number;
  readonly color: string;
  readonly fill?: string;
  /** The colour of a thin frame all around. */
  readonly border?: string;
  /** The colour of a thin line below. */
  readonly underline?: string;
  /** Steps away from the cell's left edge, where the figure of the cell before it ends. */
  readonly indent?: number;
}

const INK = '#1d2b2f';
const MUTED = '#4d5f63';

/** What a person fills in is told apart by its frame as well as by its ground. */
export const LOOKS: Readonly<Record<CellStyle, Look>> = {
  title: { bold: true, size: 14, color: INK },
  heading: { bold: true, color: INK, underline: '#7d9296' },
  label: { color: INK },
  input: { color: INK, fill: '#fff6d6', border: '#b98d1f' },
  result: { bold: true, color: INK, fill: '#e3f1ee', border: '#5c938a' },
  unit: { color: MUTED, indent: 1 },
  note: { italic: true, color: MUTED },
  caution: { bold: true, color: '#8a2f12' },
};
