import type { Box } from '../grid/chartPlace.js';

/** A box as the style of an element. */
export const styleOf = ({ left, top, width, height }: Box) => ({
  left: `${left}px`,
  top: `${top}px`,
  width: `${width}px`,
  height: `${height}px`,
});
