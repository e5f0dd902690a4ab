import type { Unit } from '../../../src/core/units.js';
import { LETTER } from './letter.js';
import type { Axis, LegendEntry, Panel, Picture } from './picture.js';
import { extentOf, type Scale, scaleOf, ticksOf } from './scales.js';
import { type NamePlace, rowsOf, sideBySide } from './sideBySide.js';

export interface Tick {
  readonly at: number;
  readonly text: string;
}

export interface PlacedPanel {
  readonly panel: Panel;
  readonly top: number;
  readonly bottom: number;
  readonly y: Scale;
  readonly ticks: readonly Tick[];
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly x: Scale;
  readonly xTicks: readonly Tick[];
  readonly panels: readonly PlacedPanel[];
  /** Height of a line of text. */
  readonly line: number;
  /** Width of a letter. */
  readonly letter: number;
  readonly legend: boolean;
  /** Names of lines and points, above the panels. */
  readonly named: readonly (LegendEntry & NamePlace)[];
}

/** The room to draw in, and the size of its text, in pixels. */
export interface Room {
  readonly width: number;
  /** Where the drawing is to fill it; otherwise it is as high as suits its width. */
  readonly height?: number;
  readonly text: number;
  readonly number: (value: number, unit: Unit) => string;
}

const LEAST_HEIGHT = 150;
const MOST_HEIGHT = 280;
/** Above and below a panel, and below the last of them, in lines of text. */
const [ABOVE, BELOW, FOOT] = [1.3, 0.9, 2.9];
/** Room for one tick, in heights of the text. */
export const ROOM_FOR_TICK = { x: 6.5, y: 2.5 };

/** Floating-point dust on a tick would be written out. */
const tidy = (value: number): number => Number(value.toPrecision(12));

export const tickTexts = (ticks: readonly number[], { unit }: Axis, { number }: Room): Tick[] =>
  ticks.map((at) => ({ at, text: number(tidy(at), unit) }));

const hasLegend = (panels: readonly Panel[]): boolean =>
  panels.some(({ marks }) => marks.some(({ kind }) => kind === 'dots') && marks.some(({ kind }) => kind === 'curve'));

/** Where everything stands: panels below each other over one x axis, each under the title of its y axis. */
export function layOut(
  { x: xAxis, panels, legend: entries = [] }: Extract<Picture, { panels: unknown }>,
  room: Room,
): Layout {
  const { width, text } = room;
  const line = text * 1.4;
  const places = sideBySide(
    entries.map((one) => one.text),
    width,
    text,
  );
  const named = entries.map((one, index) => ({ ...one, ...(places[index] as NamePlace) }));
  const legend = named.length === 0 && hasLegend(panels);
  let top = legend ? line * 1.4 : rowsOf(places) * line;
  const shares = panels.reduce((sum, { height }) => sum + height, 0);
  const besides = top + (ABOVE + BELOW) * panels.length * line + (FOOT - BELOW) * line;
  const usual =
    room.height === undefined
      ? Math.min(MOST_HEIGHT, Math.max(LEAST_HEIGHT, width * 0.5))
      : (room.height - besides) / shares;
  const placed = panels.map((panel): PlacedPanel => {
    const height = Math.max(usual * panel.height, (room.height === undefined ? 5 : 2) * line);
    const count = Math.max(2, Math.floor(height / (text * ROOM_FOR_TICK.y)));
    const [start, bottom] = [top + line * ABOVE, top + line * ABOVE + height];
    const values = panel.marks.flatMap((mark) => extentOf(mark).y);
    const y = scaleOf(panel.y, values, [bottom, start]);
    top = bottom + line * BELOW;
    return { panel, top: start, bottom, y, ticks: tickTexts(ticksOf(y, panel.y, count), panel.y, room) };
  });
  const longest = Math.max(...placed.flatMap(({ ticks }) => ticks.map((one) => one.text.length)));
  const left = Math.ceil(longest * text * LETTER + text);
  const right = Math.floor(width - text * 0.4);
  const xCount = Math.max(2, Math.floor((right - left) / (text * ROOM_FOR_TICK.x)));
  const xs = panels.flatMap(({ marks }) => marks.flatMap((mark) => extentOf(mark).x));
  const x = scaleOf(xAxis, xs, [left, right]);
  const last = placed.at(-1)?.bottom ?? 0;
  return {
    ...{ width, left, right, x, line, legend, named },
    letter: text * LETTER,
    xTicks: tickTexts(ticksOf(x, xAxis, xCount), xAxis, room),
    panels: placed,
    height: Math.ceil(last + line * FOOT),
  };
}
