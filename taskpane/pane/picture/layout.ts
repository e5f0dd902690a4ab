import type { Unit } from '../../../src/core/units.js';
import type { Axis, LegendEntry, Panel, Picture } from './picture.js';
import { extentOf, type Scale, scaleOf, ticksOf } from './scales.js';

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
  /** Names of lines and points below each other, above the panels. */
  readonly named: readonly LegendEntry[];
}

/** The room to draw in, and the size of its text, in pixels. */
export interface Room {
  readonly width: number;
  readonly text: number;
  readonly number: (value: number, unit: Unit) => string;
}

/** Width of a letter, as a share of the size of the text: a cautious guess, since no text is measured. */
export const LETTER = 0.6;
const LEAST_HEIGHT = 150;
const MOST_HEIGHT = 280;
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
  { x: xAxis, panels, legend: named = [] }: Extract<Picture, { panels: unknown }>,
  room: Room,
): Layout {
  const { width, text } = room;
  const line = text * 1.4;
  const usual = Math.min(MOST_HEIGHT, Math.max(LEAST_HEIGHT, width * 0.5));
  const legend = named.length === 0 && hasLegend(panels);
  let top = legend ? line * 1.4 : named.length * line;
  const placed = panels.map((panel): PlacedPanel => {
    const height = Math.max(usual * panel.height, 5 * line);
    const count = Math.max(2, Math.floor(height / (text * ROOM_FOR_TICK.y)));
    const [start, bottom] = [top + line * 1.3, top + line * 1.3 + height];
    const values = panel.marks.flatMap((mark) => extentOf(mark).y);
    const y = scaleOf(panel.y, values, [bottom, start]);
    top = bottom + line * 0.9;
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
    height: Math.ceil(last + line * 2.9),
  };
}
