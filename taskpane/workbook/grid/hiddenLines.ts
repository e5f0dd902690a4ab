import { BooleanNumber } from '../engine/core.js';

interface Line {
  hd?: BooleanNumber;
}
type Lines<One extends Line> = Readonly<Record<number, One>>;

/** What is said of rows or columns, with those hidden that are named. */
export const withHidden = <One extends Line>(
  lines: Lines<One>,
  hidden: readonly number[] = [],
): Record<number, One> => ({
  ...lines,
  ...Object.fromEntries(hidden.map((place) => [place, { ...lines[place], hd: BooleanNumber.TRUE }])),
});

/** The rows or columns that are hidden, from 0. */
export const hiddenOf = (lines: Lines<Line> = {}): number[] =>
  Object.entries(lines).flatMap(([place, line]) => (line?.hd === BooleanNumber.TRUE ? [Number(place)] : []));
