import { describe, expect, it } from 'vitest';
import { layOutBars } from '../../taskpane/pane/picture/barLayout.js';
import { layOut } from '../../taskpane/pane/picture/layout.js';
import type { Axis, Bars, Mark, Panel } from '../../taskpane/pane/picture/picture.js';
import { scaleOf, ticksOf } from '../../taskpane/pane/picture/scales.js';

const axis: Axis = { label: 'Pressure drop', unit: 'bar' };
const room = (width: number, text = 12) => ({ width, text, number: (value: number) => String(value) });
const panel = (...marks: Mark[]): Panel => ({ y: { ...axis, fromZero: true }, height: 1, marks });
const curve: Mark = {
  kind: 'curve',
  points: [
    { x: 0, y: 0.6 },
    { x: 2104, y: 4 },
  ],
};
const laid = (width: number, panels: readonly Panel[], text?: number) =>
  layOut({ title: '', summary: '', notes: [], table: { columns: [], rows: [] }, x: axis, panels }, room(width, text));

describe('the geometry of a picture', () => {
  it.each([220, 290, 700])('keeps everything inside %d pixels', (width) => {
    const { left, right, x, panels, height, xTicks } = laid(width, [panel(curve), panel(curve)]);
    expect(left).toBeGreaterThan(0);
    expect(right).toBeLessThanOrEqual(width);
    for (const { at } of xTicks) expect(x(at)).toBeGreaterThanOrEqual(left);
    for (const { at } of xTicks) expect(x(at)).toBeLessThanOrEqual(right);
    expect(panels[0]?.bottom).toBeLessThan(panels[1]?.top as number);
    expect(panels[1]?.bottom).toBeLessThan(height);
  });

  it('has every mark in its panel, limits included', () => {
    const [placed] = laid(300, [panel(curve, { kind: 'level', at: 4.5, text: 'limit' })]).panels;
    for (const value of [0, 0.6, 4, 4.5]) {
      expect(placed?.y(value)).toBeGreaterThanOrEqual(placed?.top as number);
      expect(placed?.y(value)).toBeLessThanOrEqual(placed?.bottom as number);
    }
    expect(placed?.y(0)).toBe(placed?.bottom);
  });

  it('has more ticks where there is more room, and fewer where the text is larger', () => {
    const ticks = (width: number, text?: number) => laid(width, [panel(curve)], text).xTicks.length;
    expect(ticks(700)).toBeGreaterThan(ticks(250));
    expect(ticks(700, 24)).toBeLessThan(ticks(700));
  });

  it('keeps room at the left for the longest number', () => {
    const tall = panel({
      kind: 'curve',
      points: [
        { x: 0, y: 0 },
        { x: 1, y: 123_456_789 },
      ],
    });
    expect(laid(300, [tall]).left).toBeGreaterThan(laid(300, [panel(curve)]).left);
  });

  it('has a legend only where data and a fit are drawn together', () => {
    expect(laid(300, [panel(curve)]).legend).toBe(false);
    expect(laid(300, [panel(curve, { kind: 'dots', points: [] })]).legend).toBe(true);
  });
});

describe('a logarithmic axis', () => {
  const logarithmic: Axis = { ...axis, logarithmic: true };
  const ticks = (from: number, to: number, count: number) =>
    ticksOf(scaleOf(logarithmic, [from, to], [0, 300]), logarithmic, count);

  it('has powers of ten, with 2 and 5 between them where there is room', () => {
    expect(ticks(1, 100, 8)).toEqual([1, 2, 5, 10, 20, 50, 100]);
    expect(ticks(1e9, 1e15, 4)).toEqual([1e9, 1e11, 1e13, 1e15]);
  });

  it('has round numbers between 3 and 4 too', () => {
    const found = ticks(3.1, 3.9, 4);
    expect(found.length).toBeGreaterThanOrEqual(2);
    for (const one of found) expect(one * 10).toBeCloseTo(Math.round(one * 10), 9);
  });

  it('goes on where all numbers are the same', () => {
    const scale = scaleOf(logarithmic, [5], [0, 300]);
    expect(scale(5)).toBeCloseTo(150, 6);
  });
});

describe('a linear axis', () => {
  it('begins at 0 where its numbers do, and has a little room otherwise', () => {
    expect(scaleOf(axis, [0, 10], [0, 100])(0)).toBe(0);
    expect(scaleOf(axis, [1, 10], [0, 100])(1)).toBeGreaterThan(0);
  });

  it.each([[[]], [[7]], [[0]], [[7, 7, 7]]])('has a length for %j', (values) => {
    const [from, to] = scaleOf(axis, values, [0, 100]).domain();
    expect(to).toBeGreaterThan(from as number);
  });
});

describe('the geometry of bars', () => {
  const bars = (lines: Bars['lines']): Bars => ({ axis, sets: ['Present', 'Proposed'], lines });
  const both = (one: number, other: number, from = 0) => [
    { set: 0 as const, from, to: one },
    { set: 1 as const, from, to: other },
  ];

  it('puts two bars from 0 below each other, and two ends of a range into one row', () => {
    const { lines } = layOutBars(
      bars([
        { label: 'a', bars: both(3, 2) },
        { label: 'b', bars: both(1, 4, 2) },
      ]),
      room(300),
    );
    const tops = lines.map((line) => line.bars.map(({ top }) => top));
    expect(tops[0]?.[0]).toBeLessThan(tops[0]?.[1] as number);
    expect(tops[1]?.[0]).toBe(tops[1]?.[1]);
    expect(lines[1]?.bars[0]?.left).toBeLessThan(lines[1]?.bars[1]?.left as number);
  });

  it('shows a bar of no length as a line, and keeps all inside', () => {
    const { lines, width, height } = layOutBars(bars([{ label: 'a', bars: both(0, 5) }]), room(240));
    expect(lines[0]?.bars[0]?.width).toBe(1);
    for (const { left, width: long, top } of lines[0]?.bars ?? []) {
      expect(left + long).toBeLessThanOrEqual(width);
      expect(top).toBeLessThan(height);
    }
  });
});
