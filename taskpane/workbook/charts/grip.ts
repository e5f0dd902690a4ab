import { type Box, LEAST } from '../grid/chartPlace.js';

/** Which sides of a box a hand moves: none of them moves the whole. */
export interface Grip {
  readonly x: -1 | 0 | 1;
  readonly y: -1 | 0 | 1;
}

export const WHOLE: Grip = { x: 0, y: 0 };
const SIDES = [-1, 0, 1] as const;
/** The corners and the middles of the sides. */
export const GRIPS: readonly Grip[] = SIDES.flatMap((y) => SIDES.map((x) => ({ x, y }))).filter(
  ({ x, y }) => x !== 0 || y !== 0,
);

/** One side moves at most until the box is as small as it may be. */
function side(at: number, length: number, which: -1 | 0 | 1, by: number, least: number): [at: number, length: number] {
  if (which === 0) return [at, length];
  if (which === 1) return [at, Math.max(least, length + by)];
  const moved = Math.min(by, length - least);
  return [at + moved, length - moved];
}

/** A box after a hand has moved by so many pixels. */
export function dragged(box: Box, { x, y }: Grip, across: number, down: number): Box {
  if (x === 0 && y === 0) return { ...box, left: box.left + across, top: box.top + down };
  const [left, width] = side(box.left, box.width, x, across, LEAST.width);
  const [top, height] = side(box.top, box.height, y, down, LEAST.height);
  return { left, top, width, height };
}

const STEP = 10;
const ARROWS: Readonly<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-STEP, 0],
  ArrowRight: [STEP, 0],
  ArrowUp: [0, -STEP],
  ArrowDown: [0, STEP],
};

/** A box after an arrow key, which moves it, or with Shift its right and lower sides; undefined for other keys. */
export function stepped(box: Box, { key, shiftKey }: Pick<KeyboardEvent, 'key' | 'shiftKey'>): Box | undefined {
  const step = ARROWS[key];
  if (!step) return undefined;
  const [across, down] = step;
  return dragged(box, shiftKey ? { x: across ? 1 : 0, y: down ? 1 : 0 } : WHOLE, across, down);
}
