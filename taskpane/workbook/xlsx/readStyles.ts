import type { Look } from '../../host/looks.js';
import { LIMITS } from './limits.js';
import type { Colours } from './readColours.js';
import { formatsOf } from './readFormats.js';
import { attribute, childOf, childrenOf, isTrue, whole, type XmlElement } from './readXml.js';

/** How one kind of cell is shown; cells name it by its place in the list. */
export interface Shown {
  readonly format?: string;
  readonly look?: Partial<Look>;
}

/** The size that a cell has in the grid without being told. */
const USUAL_SIZE = 11;
const LARGEST_SIZE = 409;
const MOST_INDENT = 15;

/** An element that stands for `yes` by being there, unless it says otherwise. */
const says = (font: XmlElement | undefined, name: string): boolean => {
  const found = childOf(font, name);
  return found !== undefined && isTrue(attribute(found, 'val') ?? '1');
};

/** The page's own ink, so that a dark page can turn it light. */
const isPlainInk = (color: XmlElement | undefined): boolean =>
  attribute(color, 'theme') === '1' && attribute(color, 'tint') === undefined;

function fontLook(font: XmlElement | undefined, colours: Colours): Partial<Look> {
  const ink = childOf(font, 'color');
  const color = isPlainInk(ink) ? undefined : colours(ink);
  const size = Number(attribute(childOf(font, 'sz'), 'val') ?? USUAL_SIZE);
  return {
    ...(says(font, 'b') ? { bold: true } : {}),
    ...(says(font, 'i') ? { italic: true } : {}),
    ...(size >= 1 && size <= LARGEST_SIZE && size !== USUAL_SIZE ? { size } : {}),
    ...(color ? { color } : {}),
  };
}

/** The ground of a cell; a pattern is shown by its first colour alone. */
export function fillOf(fill: XmlElement | undefined, colours: Colours): string | undefined {
  const pattern = childOf(fill, 'patternFill');
  const kind = attribute(pattern, 'patternType');
  return kind === 'none' ? undefined : colours(childOf(pattern, 'fgColor'));
}

/** A frame where all four sides have a line, else the line below. */
function borderLook(border: XmlElement | undefined, colours: Colours): Partial<Look> {
  const line = (side: string): string | undefined => {
    const found = childOf(border, side);
    const kind = attribute(found, 'style');
    return kind === undefined || kind === 'none' ? undefined : (colours(childOf(found, 'color')) ?? '#000000');
  };
  const below = line('bottom');
  if (!below) return {};
  return ['left', 'right', 'top'].every(line) ? { border: below } : { underline: below };
}

/** The looks of a file in their order, and of its conditional formats the ground and ink. */
export function shownOf(styles: XmlElement | undefined, colours: Colours): readonly Shown[] {
  const listed = (name: string) => childrenOf(childOf(styles, name));
  const [fonts, fills, borders] = ['fonts', 'fills', 'borders'].map(listed);
  const at = (list: XmlElement[] | undefined, xf: XmlElement, name: string) => list?.[whole(attribute(xf, name)) ?? -1];
  const formatOf = formatsOf(styles);
  return listed('cellXfs')
    .slice(0, LIMITS.looks)
    .map((xf) => {
      const format = formatOf(attribute(xf, 'numFmtId'));
      const fill = fillOf(at(fills, xf, 'fillId'), colours);
      const indent = Math.min(MOST_INDENT, whole(attribute(childOf(xf, 'alignment'), 'indent')) ?? 0);
      const look: Partial<Look> = {
        ...fontLook(at(fonts, xf, 'fontId'), colours),
        ...borderLook(at(borders, xf, 'borderId'), colours),
        ...(fill ? { fill } : {}),
        ...(indent > 0 ? { indent } : {}),
      };
      return { ...(format ? { format } : {}), ...(Object.keys(look).length > 0 ? { look } : {}) };
    });
}

/** The ground of each conditional format, in the order of the file. */
export const conditionFills = (styles: XmlElement | undefined, colours: Colours): readonly (string | undefined)[] =>
  childrenOf(childOf(styles, 'dxfs')).map((one) => {
    const pattern = childOf(one, 'fill', 'patternFill');
    return colours(childOf(pattern, 'bgColor')) ?? colours(childOf(pattern, 'fgColor'));
  });
