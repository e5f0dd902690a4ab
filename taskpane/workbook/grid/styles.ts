import type { CellStyle } from '../../host/host.js';
import { LOOKS, type Look } from '../../host/looks.js';
import { BooleanNumber, BorderStyleTypes, HorizontalAlign, type IStyleData, WrapStrategy } from '../engine/core.js';

/** Pixels of one step of indent. */
export const INDENT = 8;

const line = (rgb: string) => ({ s: BorderStyleTypes.THIN, cl: { rgb } });

/** A look, or as much of one as is known, as the engine keeps it. */
export function engineLook({ bold, italic, size, color, fill, border, underline, indent }: Partial<Look>): IStyleData {
  return {
    ...(color ? { cl: { rgb: color } } : {}),
    ...(bold ? { bl: BooleanNumber.TRUE } : {}),
    ...(italic ? { it: BooleanNumber.TRUE } : {}),
    ...(size ? { fs: size } : {}),
    ...(fill ? { bg: { rgb: fill } } : {}),
    ...(border ? { bd: { t: line(border), r: line(border), b: line(border), l: line(border) } } : {}),
    ...(underline ? { bd: { b: line(underline) } } : {}),
    ...(indent ? { pd: { l: indent * INDENT } } : {}),
  };
}

function lookOf(style: CellStyle): IStyleData {
  // A label that is too long must not run over the figure beside it.
  return { ...engineLook(LOOKS[style]), ...(style === 'label' ? { tb: WrapStrategy.CLIP } : {}) };
}

export function styleOf(
  style: CellStyle | undefined,
  format: string | undefined,
  align?: 'right' | 'indented',
): IStyleData | undefined {
  if (!style && !format) return undefined;
  return {
    ...(style ? lookOf(style) : {}),
    ...(format ? { n: { pattern: format } } : {}),
    ...(align === 'right' ? { ht: HorizontalAlign.RIGHT } : {}),
    ...(align === 'indented' ? { pd: lookOf('unit').pd } : {}),
  };
}
