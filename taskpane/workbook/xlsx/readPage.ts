import { LIMITS } from './limits.js';
import type { Attributes, PageSetup } from './pageSetup.js';
import { type Printed, printedOf } from './printed.js';
import type { Reading } from './reading.js';
import { attribute, childOf, childrenOf, isTrue, whole, type XmlElement } from './readXml.js';

const PAPER = [
  'paperSize',
  'orientation',
  'scale',
  'fitToWidth',
  'fitToHeight',
  'pageOrder',
  'firstPageNumber',
  'useFirstPageNumber',
];
const MARGINS = ['left', 'right', 'top', 'bottom', 'header', 'footer'];
const OPTIONS = ['horizontalCentered', 'verticalCentered', 'gridLines', 'headings'];
const WORDS = ['oddHeader', 'oddFooter', 'evenHeader', 'evenFooter', 'firstHeader', 'firstFooter'];
const USUAL = /^[\w.-]{1,30}$/;
const LONGEST = 1000;

const said = (element: XmlElement | undefined, names: readonly string[]): Attributes =>
  Object.fromEntries(
    names.flatMap((name) => {
      const value = attribute(element, name);
      return value !== undefined && USUAL.test(value) ? [[name, value]] : [];
    }),
  );

const some = <Key extends string>(key: Key, found: Attributes) =>
  (Object.keys(found).length > 0 ? { [key]: found } : {}) as Partial<Record<Key, Attributes>>;

/** Where new pages begin because someone wants them to; other breaks are a program's reckoning. */
function breaksIn(element: XmlElement | undefined, most: number, leftOut: Reading['leftOut']): readonly number[] {
  const places = childrenOf(element, 'brk').flatMap((one) =>
    isTrue(attribute(one, 'man')) ? [whole(attribute(one, 'id')) ?? most] : [],
  );
  const kept = places.filter((place) => place > 0 && place < most);
  if (kept.length < places.length) leftOut.add('printAreas');
  return kept;
}

/** What a sheet says of its print. */
export function pageOf(sheet: XmlElement, printed: Printed, { leftOut }: Reading): PageSetup {
  const at = (name: string) => childOf(sheet, name);
  const rowBreaks = breaksIn(at('rowBreaks'), LIMITS.rows, leftOut);
  const columnBreaks = breaksIn(at('colBreaks'), LIMITS.columns, leftOut);
  const words = childrenOf(at('headerFooter')).flatMap(({ localName, textContent }) =>
    WORDS.includes(localName ?? '') && textContent ? [[localName, textContent.slice(0, LONGEST)]] : [],
  );
  return {
    ...(isTrue(attribute(childOf(sheet, 'sheetPr', 'pageSetUpPr'), 'fitToPage')) ? { fits: true } : {}),
    ...some('paper', said(at('pageSetup'), PAPER)),
    ...some('margins', said(at('pageMargins'), MARGINS)),
    ...some('options', said(at('printOptions'), OPTIONS)),
    ...some('words', Object.fromEntries(words)),
    ...printedOf(printed, leftOut),
    ...(rowBreaks.length > 0 ? { rowBreaks } : {}),
    ...(columnBreaks.length > 0 ? { columnBreaks } : {}),
  };
}
