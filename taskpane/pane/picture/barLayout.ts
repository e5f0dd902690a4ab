import { LETTER, ROOM_FOR_TICK, type Room, type Tick, tickTexts } from './layout.js';
import type { Bars } from './picture.js';
import { type Scale, scaleOf, ticksOf } from './scales.js';

export interface PlacedBar {
  readonly set: 0 | 1;
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
  /** Whether the two sets' names stand below each other. */
  readonly stacked: boolean;
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

/** Where everything stands: each line of bars under its words, so that narrow panes have room for both. */
export function layOutBars({ axis, sets, lines, level }: Bars, room: Room): BarLayout {
  const { width, text } = room;
  const line = text * 1.4;
  const thick = text * 0.85;
  const [left, right] = [Math.ceil(text * 0.5), Math.floor(width - text * 0.5)];
  const ends = lines.flatMap(({ bars }) => bars.flatMap(({ from, to }) => [from, to]));
  const x = scaleOf(axis, level ? [...ends, level.at] : ends, [left, right]);
  const count = Math.max(2, Math.floor((right - left) / (text * ROOM_FOR_TICK.x)));
  const stacked = (sets[0].length + sets[1].length) * text * LETTER + 4 * line > width;
  const top = line * ((stacked ? 2.2 : 1.2) + (level ? 1.1 : 0));
  let next = top;
  const placed = lines.map(({ label, note, bars }): PlacedLine => {
    const foot = next + line;
    const rows = overlap(bars);
    const first = foot + line * 0.3;
    const all = bars.map(({ set, from, to }, index): PlacedBar => {
      const [start, end] = [x(Math.min(from, to)), x(Math.max(from, to))];
      return {
        set,
        left: start,
        width: Math.max(LEAST_WIDTH, end - start),
        top: first + (rows ? index * thick * 1.15 : 0),
      };
    });
    next = first + thick * (rows ? 1.15 * bars.length : 1) + line * 0.2;
    return { label, note, foot, bars: all };
  });
  return {
    ...{ width, left, right, top, line, thick, x, stacked },
    letter: text * LETTER,
    ticks: tickTexts(ticksOf(x, axis, count), axis, room),
    lines: placed,
    bottom: next + line * 0.3,
    height: Math.ceil(next + line * 3),
  };
}
