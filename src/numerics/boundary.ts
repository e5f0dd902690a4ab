export interface Boundary {
  /** The last number on this side. */
  readonly before: number;
  /** The first number beyond. */
  readonly beyond: number;
}

/**
 * Where a question that is answered no at `from` and yes at `to` turns to yes: the span is halved until no number
 * lies between its ends. `to` may lie below `from`.
 */
export function boundary(isBeyond: (x: number) => boolean, from: number, to: number): Boundary {
  let before = from;
  let beyond = to;
  for (;;) {
    const middle = before + (beyond - before) / 2;
    if (middle === before || middle === beyond) return { before, beyond };
    if (isBeyond(middle)) beyond = middle;
    else before = middle;
  }
}

/**
 * The least place of a convex function over a span, by its slope, which only grows: where it turns from falling,
 * a kink included, or the span's end. Of a flat stretch it is the near end.
 */
export function leastOfConvex(slope: (x: number) => number, from: number, to: number): Boundary {
  if (slope(from) >= 0) return { before: from, beyond: from };
  if (slope(to) < 0) return { before: to, beyond: to };
  return boundary((x) => slope(x) >= 0, from, to);
}
