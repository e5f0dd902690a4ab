import { ROOM_FOR_TICK, type Room, type Tick, tickTexts } from './layout.js';
import { LETTER } from './letter.js';
import type { Bars, SeriesSet } from './picture.js';
import { type Scale, scaleOf, ticksOf } from './scales.js';
import { type NamePlace, rowsOf, sideBySide } from './sideBySide.js';

export interface PlacedBar {
  readonly set: SeriesSet;
  readonly left: number;
  readonly width: number;
  readonly top: number;
}

export interface PlacedLine {
  readonly label: string;
  readonly note: string | undefined;
  /** Where the words stand, above the bars. */
  readonly foot: number;
  readonly bars: readonly PlacedBar[];
}

export interface BarLayout {
  readonly width: number;
  readonly height: number;
  /** Width of a letter. */
  readonly letter: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Heights of a line of text and of a bar. */
  readonly line: number;
  readonly thick: number;
  readonly x: Scale;
  readonly ticks: readonly Tick[];
  readonly lines: readonly PlacedLine[];
  /** Where the names of the sets stand. */
  readonly named: readonly NamePlace[];
}

type Bar = Bars['lines'][number]['bars'][number];

/** Bars that only touch can stand in one row, one on each side of where they begin. */
const overlap = (bars: readonly Bar[]): boolean =>
  bars.some((one, index) =>
    bars
      .slice(index + 1)
      .some(
        (other) =>
          Math.min(Math.max(one.from, one.to), Math.max(other.from, other.to)) >
          Math.max(Math.min(one.from, one.to), Math.min(other.from, other.to)),
      ),
  );

const LEAST_WIDTH = 1;
/** How thick a bar is, in heights of the text, and how much of that a row of bars takes. */
const THICK = { least: 0.3, usual: 0.85, most: 2 } as const;
const ROW = 1.15;
/** Room of the words over bars, and of what stands below all of them, in lines of text. */
const [WORDS, FOOT] = [1.5, 3];

/** Where everything stands: each line of bars under its words, so that narrow panes have room for both. */
export function layOutBars({ axis, sets, lines, level }: Bars, room: Room): BarLayout {
  const { width, text } = room;
  const line = text * 1.4;
  const [left, right] = [Math.ceil(text * 0.5), Math.floor(width - text * 0.5)];
  const ends = lines.flatMap(({ bars }) => bars.flatMap(({ from, to }) => [from, to]));
  const x = scaleOf(axis, level ? [...ends, level.at] : ends, [left, right]);
  const count = Math.max(2, Math.floor((right - left) / (text * ROOM_FOR_TICK.x)));
  const named = sideBySide(sets, width, text);
  const top = line * (rowsOf(named) + 0.2 + (level ? 1.1 : 0));
  const most = Math.max(1, ...lines.map(({ bars }) => (overlap(bars) ? bars.length : 1)));
  const each = room.height === undefined ? undefined : (room.height - top - FOOT * line) / Math.max(1, lines.length);
  const thick =
    each === undefined
      ? text * THICK.usual
      : Math.min(text * THICK.most, Math.max(text * THICK.least, (each - WORDS * line) / (ROW * most)));
  let next = top;
  const placed = lines.map(({ label, note, bars }): PlacedLine => {
    const begins = next;
    const foot = begins + line;
    const rows = overlap(bars);
    const first = foot + line * 0.3;
    const all = bars.map(({ set, from, to }, index): PlacedBar => {
      const [start, end] = [x(Math.min(from, to)), x(Math.max(from, to))];
      return {
        set,
        left: start,
        width: Math.max(LEAST_WIDTH, end - start),
        top: first + (rows ? index * thick * ROW : 0),
      };
    });
    next = Math.max(first + thick * (rows ? ROW * bars.length : 1) + line * 0.2, begins + (each ?? 0));
    return { label, note, foot, bars: all };
  });
  return {
    ...{ width, left, right, top, line, thick, x, named },
    letter: text * LETTER,
    ticks: tickTexts(ticksOf(x, axis, count), axis, room),
    lines: placed,
    bottom: next + line * 0.3,
    height: Math.ceil(next + line * FOOT),
  };
}
