import type { SheetCondition } from '../../../src/sheets/sheet.js';
import { JUDGED_LOOKS, LOOK_NAMES } from '../../host/judgedLooks.js';
import type { BookCell } from './book.js';
import { type Alignment, type BookLook, SIDES } from './bookLook.js';
import { element, part } from './writeXml.js';

const NAMESPACE = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const FIRST_FORMAT = 164;

const argb = (colour: string): string => `FF${colour.replace('#', '').toUpperCase()}`;
export const colour = (name: string, value: string) => element(name, { rgb: argb(value) });
const solid = (fill: string) =>
  element(
    'fill',
    {},
    element('patternFill', { patternType: 'solid' }, colour('fgColor', fill), element('bgColor', { indexed: 64 })),
  );

/** A list of parts in which each different one stands once. */
class Listed {
  readonly #places: Map<string, number>;
  constructor(...first: readonly string[]) {
    this.#places = new Map(first.map((one, place) => [one, place]));
  }
  get all(): readonly string[] {
    return [...this.#places.keys()];
  }
  place(one: string): number {
    const place = this.#places.get(one) ?? this.#places.size;
    this.#places.set(one, place);
    return place;
  }
  element(name: string): string {
    const { all } = this;
    return element(name, { count: all.length }, ...all);
  }
}

/** @param both whether the colour stands in both places of a pattern: programs differ in which is that of a plain one. */
const groundPart = (fill: string, both = false): string =>
  element(
    'fill',
    {},
    element('patternFill', { patternType: 'solid' }, both ? colour('fgColor', fill) : '', colour('bgColor', fill)),
  );

function judgedPart(look: SheetCondition['look']): string {
  const { color, fill, bold, italic } = JUDGED_LOOKS[look];
  const marks = [bold ? element('b') : '', italic ? element('i') : '', colour('color', color)];
  return element('dxf', {}, element('font', {}, ...marks), groundPart(fill));
}

/** The place of a look of conditional formats in the file. */
export const judgedId = (look: SheetCondition['look']): number => LOOK_NAMES.indexOf(look);

/** The looks and formats of a workbook, each once, by the number that cells name. */
export class WrittenStyles {
  readonly #fonts = new Listed(fontOf({}));
  readonly #fills = new Listed(
    element('fill', {}, element('patternFill', { patternType: 'none' })),
    element('fill', {}, element('patternFill', { patternType: 'gray125' })),
  );
  readonly #borders = new Listed(borderOf({}));
  readonly #formats = new Listed();
  readonly #cells = new Listed(element('xf', { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0, xfId: 0 }));

  /** How conditional formats look, in their order, and what filters by colour look for. */
  readonly #judged = new Listed(...LOOK_NAMES.map(judgedPart));

  /** By what the cell says, since very many cells have the same few looks. */
  readonly #ids = new Map<string, number>();

  id({ look = {}, format, align }: BookCell): number {
    if (Object.keys(look).length === 0 && format === undefined && align === undefined) return 0;
    const key = JSON.stringify([look, format, align]);
    const id = this.#ids.get(key) ?? this.#new(look, format, align);
    this.#ids.set(key, id);
    return id;
  }

  #new(look: BookLook, format: string | undefined, align: Alignment | undefined): number {
    const font = this.#fonts.place(fontOf(look));
    const fill = look.fill === undefined ? 0 : this.#fills.place(solid(look.fill));
    const border = this.#borders.place(borderOf(look));
    const alignment = alignmentPart(align ?? {}, look.indent);
    return this.#cells.place(
      element(
        'xf',
        {
          ...{ numFmtId: this.#format(format), fontId: font, fillId: fill, borderId: border, xfId: 0 },
          ...{ applyNumberFormat: 1, applyFont: 1, applyFill: 1, applyBorder: 1 },
          applyAlignment: alignment ? 1 : undefined,
        },
        alignment,
      ),
    );
  }

  /** The number of a ground by which a filter chooses; without a colour it is that of cells without any. */
  groundId(fill: string | undefined): number {
    const plain = element('fill', {}, element('patternFill', { patternType: 'none' }));
    return this.#judged.place(element('dxf', {}, fill === undefined ? plain : groundPart(fill, true)));
  }

  /** The same of an ink. */
  inkId(ink: string): number {
    return this.#judged.place(element('dxf', {}, element('font', {}, colour('color', ink))));
  }

  #format(format: string | undefined): number {
    if (format === undefined || format === 'General') return 0;
    return FIRST_FORMAT + this.#formats.place(format);
  }

  xml(): string {
    const formats = this.#formats.all.map((formatCode, index) =>
      element('numFmt', { numFmtId: FIRST_FORMAT + index, formatCode }),
    );
    return part(
      element(
        'styleSheet',
        { xmlns: NAMESPACE },
        formats.length > 0 ? element('numFmts', { count: formats.length }, ...formats) : '',
        this.#fonts.element('fonts'),
        this.#fills.element('fills'),
        this.#borders.element('borders'),
        element('cellStyleXfs', { count: 1 }, element('xf', { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0 })),
        this.#cells.element('cellXfs'),
        element('cellStyles', { count: 1 }, element('cellStyle', { name: 'Normal', xfId: 0, builtinId: 0 })),
        this.#judged.element('dxfs'),
      ),
    );
  }
}

function fontOf({ bold, italic, size = 11, color, font = 'Calibri', underlined, struck, raised }: BookLook): string {
  const marks = [
    bold ? element('b') : '',
    italic ? element('i') : '',
    struck ? element('strike') : '',
    color ? colour('color', color) : '',
    element('sz', { val: size }),
    underlined ? element('u', underlined === 'double' ? { val: 'double' } : {}) : '',
    raised ? element('vertAlign', { val: raised }) : '',
    element('name', { val: font }),
  ];
  return element('font', {}, ...marks);
}

const borderOf = ({ lines = {} }: BookLook): string =>
  element(
    'border',
    {},
    ...SIDES.map((side) => {
      const line = lines[side];
      return line ? element(side, { style: line.style }, colour('color', line.color)) : element(side);
    }),
    element('diagonal'),
  );

function alignmentPart({ across, down, wrap, turned = 0 }: Alignment, indent: number | undefined): string {
  const said = {
    horizontal: across ?? (indent ? 'left' : undefined),
    vertical: down,
    textRotation: turned === 'stacked' ? 255 : (turned < 0 ? 90 - turned : turned) || undefined,
    wrapText: wrap ? 1 : undefined,
    indent: indent || undefined,
  };
  return Object.values(said).some((one) => one !== undefined) ? element('alignment', said) : '';
}
