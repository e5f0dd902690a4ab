import {
  BaselineOffset,
  BooleanNumber,
  HorizontalAlign,
  type IBorderData,
  type IBorderStyleData,
  type IStyleData,
  TextDecoration,
  VerticalAlign,
  WrapStrategy,
} from '../engine/core.js';
import type { BookCell } from '../xlsx/book.js';
import { type Alignment, type BookLook, LINE_STYLES, SIDES } from '../xlsx/bookLook.js';
import { engineLook, INDENT } from './styles.js';

type Across = NonNullable<Alignment['across']>;
type Down = NonNullable<Alignment['down']>;

const ACROSS: Readonly<Record<Across, HorizontalAlign>> = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
  justify: HorizontalAlign.JUSTIFIED,
};
const DOWN: Readonly<Record<Down, VerticalAlign>> = {
  top: VerticalAlign.TOP,
  center: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
};
const RAISED = { superscript: BaselineOffset.SUPERSCRIPT, subscript: BaselineOffset.SUBSCRIPT } as const;
const EDGES = { left: 'l', right: 'r', top: 't', bottom: 'b' } as const;

const keyOf = <Key extends string>(table: Readonly<Record<Key, unknown>>, value: unknown): Key | undefined =>
  (Object.keys(table) as Key[]).find((key) => table[key] === value);

function linesStyle(lines: BookLook['lines']): IStyleData {
  const sides = Object.entries(lines ?? {}).map(([side, { style, color }]) => [
    EDGES[side as keyof typeof EDGES],
    { s: LINE_STYLES.indexOf(style) + 1, cl: { rgb: color } },
  ]);
  return sides.length > 0 ? { bd: Object.fromEntries(sides) } : {};
}

function alignStyle({ across, down, wrap, turned }: Alignment): IStyleData {
  return {
    ...(across ? { ht: ACROSS[across] } : {}),
    ...(down ? { vt: DOWN[down] } : {}),
    ...(wrap ? { tb: WrapStrategy.WRAP } : {}),
    // The engine turns downwards.
    ...(turned === undefined ? {} : { tr: turned === 'stacked' ? { a: 0, v: BooleanNumber.TRUE } : { a: -turned } }),
  };
}

/** The format that says that there is none. */
export const UNFORMATTED = 'General';

/** How a cell of a file is shown, as the engine keeps it. */
export function styleOfBook({ look = {}, format, align = {} }: BookCell): IStyleData {
  const { font, underlined, struck, raised, lines, ...rest } = look;
  const decoration = underlined === 'double' ? TextDecoration.DOUBLE : TextDecoration.SINGLE;
  return {
    ...engineLook(rest),
    ...linesStyle(lines),
    ...(font ? { ff: font } : {}),
    ...(underlined ? { ul: { s: BooleanNumber.TRUE, t: decoration } } : {}),
    ...(struck ? { st: { s: BooleanNumber.TRUE } } : {}),
    ...(raised ? { va: RAISED[raised] } : {}),
    ...alignStyle(align),
    ...(format ? { n: { pattern: format } } : {}),
  };
}

function linesOf(bd: IBorderData): BookLook {
  const lines = SIDES.flatMap((side) => {
    const { s, cl } = (bd[EDGES[side]] ?? {}) as Partial<IBorderStyleData>;
    const style = LINE_STYLES[(s ?? 0) - 1];
    return style ? [[side, { style, color: cl?.rgb?.startsWith('#') ? cl.rgb : '#000000' }]] : [];
  });
  return lines.length > 0 ? { lines: Object.fromEntries(lines) } : {};
}

export function lookOfStyle({ bl, it, fs, cl, bg, bd, pd, ff, ul, st, va }: IStyleData): BookLook {
  const indent = Math.round((pd?.l ?? 0) / INDENT);
  const raised = keyOf(RAISED, va);
  return {
    ...(bl === BooleanNumber.TRUE ? { bold: true } : {}),
    ...(it === BooleanNumber.TRUE ? { italic: true } : {}),
    ...(fs ? { size: fs } : {}),
    ...(cl?.rgb?.startsWith('#') ? { color: cl.rgb } : {}),
    ...(bg?.rgb?.startsWith('#') ? { fill: bg.rgb } : {}),
    ...(bd ? linesOf(bd) : {}),
    ...(indent > 0 ? { indent } : {}),
    ...(ff ? { font: ff } : {}),
    ...(ul?.s === BooleanNumber.TRUE ? { underlined: ul.t === TextDecoration.DOUBLE ? 'double' : 'single' } : {}),
    ...(st?.s === BooleanNumber.TRUE ? { struck: true } : {}),
    ...(raised ? { raised } : {}),
  };
}

export function alignOfStyle({ ht, vt, tb, tr }: IStyleData): Alignment {
  const [across, down] = [keyOf(ACROSS, ht), keyOf(DOWN, vt)];
  const turned = tr?.v === BooleanNumber.TRUE ? 'stacked' : tr?.a ? -tr.a : undefined;
  return {
    ...(across ? { across } : {}),
    ...(down ? { down } : {}),
    ...(tb === WrapStrategy.WRAP ? { wrap: true } : {}),
    ...(turned ? { turned } : {}),
  };
}
