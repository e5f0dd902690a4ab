import { type ScaleContinuousNumeric, scaleLinear, scaleLog } from 'd3-scale';
import type { Axis, Mark } from './picture.js';

export type Scale = ScaleContinuousNumeric<number, number>;

/** Numbers that a mark needs room for, along x and along y. */
export function extentOf(mark: Mark): { readonly x: readonly number[]; readonly y: readonly number[] } {
  switch (mark.kind) {
    case 'curve':
    case 'dots':
      return { x: mark.points.map((one) => one.x), y: mark.points.map((one) => one.y) };
    case 'columns':
      return {
        x: mark.columns.flatMap(({ from, to }) => [from, to]),
        y: [0, ...mark.columns.map(({ height }) => height)],
      };
    case 'level':
      return { x: [], y: [mark.at] };
    case 'upright':
      return { x: [mark.at], y: [] };
    case 'spot':
      return { x: [mark.at.x], y: [mark.at.y] };
  }
}

/** Least and most, with a little room where all numbers are the same. */
function span(values: readonly number[], { fromZero, logarithmic }: Axis): readonly [number, number] {
  let least = fromZero ? 0 : Number.POSITIVE_INFINITY;
  let most = fromZero ? 0 : Number.NEGATIVE_INFINITY;
  for (const one of values) {
    if (one < least) least = one;
    if (one > most) most = one;
  }
  if (!(least <= most)) return logarithmic ? [1, 10] : [0, 1];
  if (least < most) return [least, most];
  if (logarithmic) return [least / 2, most * 2];
  const room = Math.abs(least) / 10 || 1;
  return [least - room, most + room];
}

/** A share of the length that an axis keeps free at its ends; round ends would often leave far more. */
const ROOM = 0.04;
const HEADROOM = 0.6;

/** The scale of one axis, from one end of its room to the other. */
export function scaleOf(axis: Axis, values: readonly number[], range: readonly [number, number]): Scale {
  const [least, most] = span(values, axis);
  if (axis.logarithmic) {
    const room = (most / least) ** ROOM;
    return scaleLog([least / room, most * room], range);
  }
  const room = (most - least) * ROOM;
  const above = axis.headroom ? (most - least) * HEADROOM : room;
  // A side that begins at 0 begins there exactly.
  return scaleLinear([least === 0 ? 0 : least - room, most === 0 ? 0 : most + above], range);
}

const LEADING = [1, 2, 5];

const leads = (value: number, digits: readonly number[]): boolean => {
  const leading = value / 10 ** Math.floor(Math.log10(value) + 1e-9);
  return digits.some((one) => Math.abs(leading - one) < 1e-6);
};

/** Round numbers along an axis: on a logarithmic one powers of ten, with 2 and 5 between them where there is room. */
export function ticksOf(scale: Scale, { logarithmic }: Axis, count: number): readonly number[] {
  if (!logarithmic) return scale.ticks(count);
  const all = scale.ticks();
  const powers = all.filter((one) => leads(one, [1]));
  const some = all.filter((one) => leads(one, LEADING));
  if (some.length > count + 1) {
    const step = Math.ceil(powers.length / count);
    return powers.filter((_, index) => index % step === 0);
  }
  if (some.length >= 2) return some;
  const [least = 1, most = 10] = scale.domain();
  return scaleLinear().domain([least, most]).ticks(Math.min(count, 4));
}
