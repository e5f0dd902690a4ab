import { type Alignment, type BookLook, LINE_STYLES, type Line, SIDES } from './bookLook.js';
import { LIMITS } from './limits.js';
import { alignmentOf } from './readAlignment.js';
import type { Colours } from './readColours.js';
import { formatsOf } from './readFormats.js';
import type { LeftOut } from './reading.js';
import { attribute, childOf, childrenOf, isTrue, whole, type XmlElement } from './readXml.js';

/** How one kind of cell is shown; cells name it by its place in the list. */
export interface Shown {
  readonly format?: string;
  readonly look?: BookLook;
  readonly align?: Alignment;
  /** What the grid cannot show of it. */
  readonly missing?: readonly LeftOut[];
}

/** The size that a cell has in the grid without being told. */
const USUAL_SIZE = 11;
const LARGEST_SIZE = 409;
const MOST_INDENT = 15;
/** The fonts of files that say nothing of their own: the grid has its own in their place. */
const USUAL_FONT = 'Calibri';
const LONGEST_NAME = 31;

/** An element that stands for `yes` by being there, unless it says otherwise. */
const says = (font: XmlElement | undefined, name: string): boolean => {
  const found = childOf(font, name);
  return found !== undefined && isTrue(attribute(found, 'val') ?? '1');
};

/** The page's own ink, so that a dark page can turn it light. */
const isPlainInk = (color: XmlElement | undefined): boolean =>
  attribute(color, 'theme') === '1' && attribute(color, 'tint') === undefined;

function fontLook(font: XmlElement | undefined, colours: Colours): BookLook {
  const ink = childOf(font, 'color');
  const color = isPlainInk(ink) ? undefined : colours(ink);
  const name = attribute(childOf(font, 'name'), 'val') ?? USUAL_FONT;
  const raised = attribute(childOf(font, 'vertAlign'), 'val');
  const line = childOf(font, 'u') ? (attribute(childOf(font, 'u'), 'val') ?? 'single') : 'none';
  const size = Number(attribute(childOf(font, 'sz'), 'val') ?? USUAL_SIZE);
  return {
    ...(says(font, 'b') ? { bold: true } : {}),
    ...(says(font, 'i') ? { italic: true } : {}),
    ...(size >= 1 && size <= LARGEST_SIZE && size !== USUAL_SIZE ? { size } : {}),
    ...(color ? { color } : {}),
    ...(name !== USUAL_FONT && name.length <= LONGEST_NAME ? { font: name } : {}),
    ...(line === 'none' ? {} : { underlined: line.startsWith('double') ? ('double' as const) : ('single' as const) }),
    ...(says(font, 'strike') ? { struck: true } : {}),
    ...(raised === 'superscript' || raised === 'subscript' ? { raised } : {}),
  };
}

/** The ground of a cell; a pattern is shown by its first colour alone. */
export function fillOf(fill: XmlElement | undefined, colours: Colours): string | undefined {
  const pattern = childOf(fill, 'patternFill');
  const kind = attribute(pattern, 'patternType');
  return kind === 'none' ? undefined : colours(childOf(pattern, 'fgColor'));
}

/** The lines around a cell. */
function linesOf(border: XmlElement | undefined, colours: Colours): BookLook {
  const lines = SIDES.flatMap((side): [string, Line][] => {
    const found = childOf(border, side);
    const style = LINE_STYLES.find((one) => one === attribute(found, 'style'));
    return style ? [[side, { style, color: colours(childOf(found, 'color')) ?? '#000000' }]] : [];
  });
  return lines.length > 0 ? { lines: Object.fromEntries(lines) } : {};
}

/** What of a look has no place in the grid: grounds of two colours, and who may change a cell. */
function missingOf(xf: XmlElement, fill: XmlElement | undefined, border: XmlElement | undefined): LeftOut[] {
  const pattern = attribute(childOf(fill, 'patternFill'), 'patternType') ?? 'none';
  const plain = !childOf(fill, 'gradientFill') && ['none', 'solid', 'gray125'].includes(pattern);
  const across = attribute(childOf(border, 'diagonal'), 'style') ?? 'none';
  const lock = childOf(xf, 'protection');
  const open = isTrue(attribute(lock, 'hidden')) || !isTrue(attribute(lock, 'locked') ?? '1');
  return [...(plain && across === 'none' ? [] : ['looks' as const]), ...(open ? ['protection' as const] : [])];
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
      const [filled, border] = [at(fills, xf, 'fillId'), at(borders, xf, 'borderId')];
      const fill = fillOf(filled, colours);
      const indent = Math.min(MOST_INDENT, whole(attribute(childOf(xf, 'alignment'), 'indent')) ?? 0);
      const { align, odd } = alignmentOf(childOf(xf, 'alignment'), indent > 0);
      const look: BookLook = {
        ...fontLook(at(fonts, xf, 'fontId'), colours),
        ...linesOf(border, colours),
        ...(fill ? { fill } : {}),
        ...(indent > 0 ? { indent } : {}),
      };
      const missing = [...missingOf(xf, filled, border), ...(odd ? ['looks' as const] : [])];
      return {
        ...(format ? { format } : {}),
        ...(Object.keys(look).length > 0 ? { look } : {}),
        ...(align ? { align } : {}),
        ...(missing.length > 0 ? { missing } : {}),
      };
    });
}

/** The ground and the ink of a conditional format, or of a filter by colour. */
export interface ConditionColours {
  readonly fill: string | undefined;
  readonly ink: string | undefined;
}

/** Those of a file, in its order. */
export const conditionColours = (styles: XmlElement | undefined, colours: Colours): readonly ConditionColours[] =>
  childrenOf(childOf(styles, 'dxfs')).map((one) => {
    const pattern = childOf(one, 'fill', 'patternFill');
    const fill = colours(childOf(pattern, 'bgColor')) ?? colours(childOf(pattern, 'fgColor'));
    return { fill, ink: colours(childOf(one, 'font', 'color')) };
  });
