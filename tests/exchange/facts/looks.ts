import type { Element } from '@xmldom/xmldom';
import type { FactKind } from './fact.js';
import { at, below, everywhere, isOn, said } from './parts.js';

/** The formats that files name by number only, of ECMA-376 part 1, 18.8.30, as far as the corpus has them. */
const BUILT_IN: Readonly<Record<string, string>> = { 0: 'General', 9: '0%', 14: 'yyyy-mm-dd', 49: '@' };

const colourOf = (element: Element | undefined): string => {
  const rgb = said(element, 'rgb');
  if (rgb) return rgb.slice(-6).toUpperCase();
  const [theme, tint] = [said(element, 'theme'), said(element, 'tint')];
  return theme === undefined ? '' : `theme ${theme}${tint ? ` ${tint}` : ''}`;
};

function fontWords(font: Element | undefined): string {
  const mark = (name: string, word: string) => {
    const found = at(font, name);
    const value = (said(found, 'val') ?? '1').replace('true', '1').replace('false', '0');
    return found && value !== '0' && value !== 'none'
      ? value === '1' || value === 'single'
        ? word
        : `${word} ${value}`
      : '';
  };
  const size = Number(said(at(font, 'sz'), 'val') ?? 11);
  const name = said(at(font, 'name'), 'val') ?? 'Calibri';
  const ink = colourOf(at(font, 'color'));
  return [
    ...[
      mark('b', 'bold'),
      mark('i', 'italic'),
      mark('u', 'underlined'),
      mark('strike', 'struck'),
      mark('vertAlign', 'raised'),
    ],
    size === 11 ? '' : `size ${size}`,
    name === 'Calibri' ? '' : name,
    // The page's own ink counts as none.
    ink && ink !== '000000' && ink !== 'theme 1' ? ink : '',
  ]
    .filter(Boolean)
    .join(', ');
}

function fillWords(fill: Element | undefined): string {
  const gradient = at(fill, 'gradientFill');
  if (gradient) return `gradient ${everywhere(gradient, 'color').map(colourOf).join('–')}`;
  const pattern = at(fill, 'patternFill');
  const kind = said(pattern, 'patternType') ?? 'none';
  return kind === 'none' ? '' : `${kind} ${colourOf(at(pattern, 'fgColor'))}`;
}

const borderWords = (border: Element | undefined): string =>
  below(border)
    .flatMap((side) =>
      (said(side, 'style') ?? 'none') === 'none'
        ? []
        : [`${side.localName} ${said(side, 'style')} ${colourOf(at(side, 'color')) || '000000'}`],
    )
    .sort()
    .join(', ');

function alignmentWords(alignment: Element | undefined): string {
  const word = (name: string, usual: string) => {
    const value = said(alignment, name) ?? usual;
    return value === usual ? '' : `${name} ${value}`;
  };
  const indented = Number(said(alignment, 'indent') ?? 0) > 0;
  const across = word('horizontal', 'general');
  return [
    // An indent counts from the left unless another side is named.
    indented && across === 'horizontal left' ? '' : across,
    word('vertical', 'bottom'),
    isOn(said(alignment, 'wrapText')) ? 'wrapped' : '',
    word('indent', '0'),
    word('textRotation', '0'),
    isOn(said(alignment, 'shrinkToFit')) ? 'shrunk' : '',
  ]
    .filter(Boolean)
    .join(', ');
}

function lockWords(protection: Element | undefined): string {
  const open = said(protection, 'locked') !== undefined && !isOn(said(protection, 'locked'));
  return [open ? 'open' : '', isOn(said(protection, 'hidden')) ? 'formula hidden' : ''].filter(Boolean).join(', ');
}

export type LookFacts = Readonly<Partial<Record<FactKind, string>>>;

/** What each look of a file says, in the order of the file; what is usual is not said. */
export function looksIn(styles: Element | undefined): readonly LookFacts[] {
  const own = new Map(below(at(styles, 'numFmts')).map((one) => [said(one, 'numFmtId'), said(one, 'formatCode')]));
  const list = (name: string) => below(at(styles, name));
  const [fonts, fills, borders] = [list('fonts'), list('fills'), list('borders')];
  return list('cellXfs').map((xf) => {
    const id = said(xf, 'numFmtId') ?? '0';
    const format = own.get(id) ?? BUILT_IN[id] ?? `number ${id}`;
    return {
      'number format': format === 'General' ? '' : format,
      font: fontWords(fonts[Number(said(xf, 'fontId'))]),
      fill: fillWords(fills[Number(said(xf, 'fillId'))]),
      border: borderWords(borders[Number(said(xf, 'borderId'))]),
      alignment: alignmentWords(at(xf, 'alignment')),
      protection: lockWords(at(xf, 'protection')),
    };
  });
}

/** What each look of conditional formats says. */
export const conditionLooksIn = (styles: Element | undefined): readonly string[] =>
  below(at(styles, 'dxfs')).map((one) => {
    const ground = at(one, 'fill', 'patternFill');
    const fill = colourOf(at(ground, 'bgColor')) || colourOf(at(ground, 'fgColor'));
    return [fontWords(at(one, 'font')), fill && `on ${fill}`].filter(Boolean).join(' ');
  });
