import { BooleanNumber, BorderStyleTypes, type IStyleData, WrapStrategy } from '@univerjs/core';
import type { CellStyle as SheetStyle } from '../../../src/sheets/sheet.js';
import type { CellStyle as BlockStyle } from '../../host/host.js';

const ink = { rgb: '#1d2b2f' };
const muted = { rgb: '#4d5f63' };
const line = (rgb: string) => ({ s: BorderStyleTypes.THIN, cl: { rgb } });
const box = (rgb: string) => ({ t: line(rgb), r: line(rgb), b: line(rgb), l: line(rgb) });

/** How each kind of cell looks; what a person fills in is told apart by its box as well as by its ground. */
const looks: Record<SheetStyle | BlockStyle, IStyleData> = {
  title: { fs: 14, bl: BooleanNumber.TRUE, cl: ink },
  heading: { bl: BooleanNumber.TRUE, cl: ink, bd: { b: line('#7d9296') } },
  label: { cl: ink, tb: WrapStrategy.CLIP },
  input: { cl: ink, bg: { rgb: '#fff6d6' }, bd: box('#b98d1f') },
  result: { cl: ink, bl: BooleanNumber.TRUE, bg: { rgb: '#e3f1ee' }, bd: box('#5c938a') },
  // Away from the figure that ends at the cell's left edge.
  unit: { cl: muted, pd: { l: 8 } },
  note: { cl: muted, it: BooleanNumber.TRUE },
  caution: { cl: { rgb: '#8a2f12' }, bl: BooleanNumber.TRUE },
};

export function styleOf(
  style: SheetStyle | BlockStyle | undefined,
  format: string | undefined,
): IStyleData | undefined {
  if (!style && !format) return undefined;
  return { ...(style ? looks[style] : {}), ...(format ? { n: { pattern: format } } : {}) };
}
