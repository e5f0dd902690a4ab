/** How a page is turned. */
export type Turned = 'portrait' | 'landscape';

/** Nobody reads smaller letters on paper with ease, in points. */
const LEAST = 8;
/** The font of a cell of which nothing else is said, in points. */
export const USUAL_FONT = 11;
/** Short and long side of A4 and of Letter: what is laid out for both keeps to the shorter of each. In inches. */
const SIDES = { short: Math.min(8.27, 8.5), long: Math.min(11.69, 11) } as const;

/** Around the page, in inches. */
export const MARGINS = { left: 0.5, right: 0.5, top: 0.5, bottom: 0.5, header: 0.3, footer: 0.3 } as const;

/** Programs differ a little in how wide they reckon a column. */
const SURE = 0.98;
/** What is left of both sides of a page, in inches: as much across as down. */
const INSIDE = {
  short: SURE * (SIDES.short - MARGINS.left - MARGINS.right),
  long: SURE * (SIDES.long - MARGINS.left - MARGINS.right),
};
const [PIXELS, POINTS] = [96, 72];

/** Characters of a column of which nothing is said. */
export const USUAL_WIDTH = 8.43;

/** The width of a column in pixels, from characters in the usual font: 7 each, and 5 beside them. */
export const pixelsAcross = (characters: number): number => 7 * characters + 5;

/** The least scale, in percent, at which a font is legible. */
export const leastScale = (font = USUAL_FONT): number => Math.min(100, Math.ceil((100 * LEAST) / font));

/** How many pixels of a sheet a page has room for across, and how many points down. */
export const roomAcross = (turned: Turned, scale: number): number =>
  (INSIDE[turned === 'portrait' ? 'short' : 'long'] * PIXELS * 100) / scale;
export const roomDown = (turned: Turned, scale: number): number =>
  (INSIDE[turned === 'portrait' ? 'long' : 'short'] * POINTS * 100) / scale;

/** The way to turn a page for columns of this width together: upright as long as they are legible there. */
export const turnedFor = (pixels: number, font = USUAL_FONT): Turned =>
  pixels <= roomAcross('portrait', leastScale(font)) ? 'portrait' : 'landscape';

/** The scale at which columns are one page wide; never below the legible one, and never above the usual size. */
export const scaleFor = (pixels: number, turned: Turned, font = USUAL_FONT): number =>
  Math.max(leastScale(font), Math.min(100, Math.floor((100 * roomAcross(turned, 100)) / pixels)));
