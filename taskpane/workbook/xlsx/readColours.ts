import { attribute, childOf, childrenOf, isTrue, type XmlElement } from './readXml.js';

/** Turns a colour element into #rrggbb; undefined where it is the page's own colour or none that is known. */
export type Colours = (element: XmlElement | undefined) => string | undefined;

const HEX = /^[0-9A-F]{6}$/i;
/** The eight first colours of the fixed palette; the next eight are the same. */
const PALETTE = ['000000', 'ffffff', 'ff0000', '00ff00', '0000ff', 'ffff00', 'ff00ff', '00ffff'];
/** A theme lists dark before light; cells count light before dark. */
const ORDER = [1, 0, 3, 2];

const shades = (hex: string): [number, number, number] => [
  Number.parseInt(hex.slice(0, 2), 16) / 255,
  Number.parseInt(hex.slice(2, 4), 16) / 255,
  Number.parseInt(hex.slice(4, 6), 16) / 255,
];

/**
 * A share of the way to white (above 0) or black (below). A tint moves the lightness of hue, saturation and
 * lightness, and with it the three shades in proportion to their distance from grey.
 */
function tinted(hex: string, tint: number): string {
  const rgb = shades(hex);
  const [most, least] = [Math.max(...rgb), Math.min(...rgb)];
  const lightness = (most + least) / 2;
  const changed = tint < 0 ? lightness * (1 + tint) : lightness + (1 - lightness) * tint;
  const room = (light: number) => 1 - Math.abs(2 * light - 1);
  const stretch = room(lightness) === 0 ? 0 : room(changed) / room(lightness);
  return rgb
    .map((shade) => Math.round(Math.min(1, Math.max(0, changed + (shade - lightness) * stretch)) * 255))
    .map((shade) => shade.toString(16).padStart(2, '0'))
    .join('');
}

function themeColours(theme: XmlElement | undefined): readonly (string | undefined)[] {
  const listed = childrenOf(childOf(theme, 'themeElements', 'clrScheme')).map((one) => {
    const [colour] = childrenOf(one);
    return attribute(colour, 'lastClr') ?? attribute(colour, 'val');
  });
  return listed.map((_, place) => listed[ORDER[place] ?? place]);
}

export function coloursOf(theme: XmlElement | undefined): Colours {
  const themed = themeColours(theme);
  const plain = (element: XmlElement): string | undefined => {
    const [rgb, place, indexed] = ['rgb', 'theme', 'indexed'].map((name) => attribute(element, name));
    if (rgb !== undefined) return rgb.slice(-6);
    if (place !== undefined) return themed[Number(place)];
    return indexed !== undefined && Number(indexed) < 16 ? PALETTE[Number(indexed) % 8] : undefined;
  };
  return (element) => {
    if (!element || isTrue(attribute(element, 'auto'))) return undefined;
    const hex = plain(element);
    const tint = Number(attribute(element, 'tint') ?? 0);
    if (hex === undefined || !HEX.test(hex)) return undefined;
    return `#${(tint >= -1 && tint <= 1 && tint !== 0 ? tinted(hex, tint) : hex).toLowerCase()}`;
  };
}
