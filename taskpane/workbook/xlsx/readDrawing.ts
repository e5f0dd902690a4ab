import { pixelsAcross, USUAL_WIDTH } from '../../../src/sheets/paper.js';
import type { SheetChart } from '../../../src/sheets/sheet.js';
import { a1 } from '../../host/a1.js';
import type { BookSheet } from './book.js';
import type { Package } from './parts.js';
import { chartOf } from './readChart.js';
import type { Reading } from './reading.js';
import { attribute, childOf, childrenOf, prefixed, whole, type XmlElement } from './readXml.js';
import { chartPart } from './writeChart.js';
import { PIXEL } from './writeDrawing.js';

const MOST_CHARTS = 50;
/** A point in the small unit of drawings. */
const POINT = 12_700;
/** Of rows, in points. */
const USUAL_HEIGHT = 15;

const number = (element: XmlElement | undefined, name: string) => whole(childOf(element, name)?.textContent ?? '') ?? 0;

/** How many columns or rows from one on a length covers. */
function covered(length: number, first: number, sizeOf: (place: number) => number): number {
  let left = length;
  let place = first;
  while (place - first < 100 && left > sizeOf(place) / 2) {
    left -= sizeOf(place);
    place += 1;
  }
  return Math.max(first, place - 1);
}

/** How far inside of its first and last cell an anchor begins and ends; nothing where it stands on their edges. */
function insetOf(from: XmlElement, to: XmlElement): SheetChart['inset'] {
  const offset = (element: XmlElement, name: string) => Math.max(0, Math.round(number(element, name) / PIXEL));
  const inset = {
    left: offset(from, 'colOff'),
    top: offset(from, 'rowOff'),
    right: offset(to, 'colOff'),
    bottom: offset(to, 'rowOff'),
  };
  return Object.values(inset).some((one) => one > 0) ? inset : undefined;
}

/** The cells that a chart stands over. */
function placeOf(
  anchor: XmlElement,
  { widths, heights = [] }: Pick<BookSheet, 'widths' | 'heights'>,
): Pick<SheetChart, 'place' | 'inset'> | undefined {
  const [from, to, extent] = ['from', 'to', 'ext'].map((name) => childOf(anchor, name));
  if (!from) return undefined;
  const [left, top] = [number(from, 'col'), number(from, 'row')];
  const inset = to && insetOf(from, to);
  const size = (name: string) => whole(attribute(extent, name)) ?? 0;
  const last = (name: string, first: number) => {
    // An inset is told in full: an end that lies on an edge then lies at the beginning of its cell.
    return Math.max(first, number(to, name) - (inset ? 0 : 1));
  };
  const [right, bottom] = to
    ? [last('col', left), last('row', top)]
    : [
        covered(
          size('cx') + number(from, 'colOff'),
          left,
          (column) => pixelsAcross(widths[column] ?? USUAL_WIDTH) * PIXEL,
        ),
        covered(size('cy') + number(from, 'rowOff'), top, (row) => (heights[row] ?? USUAL_HEIGHT) * POINT),
      ];
  return { place: `${a1(top, left)}:${a1(bottom, right)}`, ...(inset ? { inset } : {}) };
}

const CACHES = new Set(['numCache', 'strCache', 'extLst', 't', 'v', 'f']);

/** All that a chart's part says but for its words and figures. */
function form(element: XmlElement): string {
  const said = Array.from({ length: element.attributes.length }, (_, place) => element.attributes.item(place))
    .filter((one) => one?.localName && one.localName !== 'lang' && !/^http/.test(one.value))
    .map((one) => `${one?.localName}=${one?.value}`)
    .sort();
  const inside = childrenOf(element).flatMap((one) => (CACHES.has(one.localName ?? '') ? [] : [form(one)]));
  return `${element.localName?.replace(/^(num|str)Ref$/, 'Ref')}[${said}](${inside})`;
}

/** The charts of a sheet that the pane can draw. What is not drawn, or not as the file draws it, is told. */
export function chartsOf(all: Package, part: string, sheet: BookSheet, reading: Reading): readonly SheetChart[] {
  const drawings = all.relations(part).filter(({ kind, outside }) => kind === 'drawing' && !outside);
  return drawings.slice(0, 1).flatMap(({ target }) => {
    const targets = new Map(all.relations(target).map((one) => [one.id, one]));
    return childrenOf(all.root(target))
      .slice(0, MOST_CHARTS)
      .flatMap((anchor): SheetChart[] => {
        const named = childOf(anchor, 'graphicFrame', 'graphic', 'graphicData', 'chart');
        const found = targets.get((named && prefixed(named, 'id')) ?? '');
        if (found?.kind !== 'chart' || found.outside) return [];
        const root = all.root(found.target);
        const chart = chartOf(root, sheet.name);
        const place = placeOf(anchor, sheet);
        if (!root || !chart || !place) return [];
        reading.drawn.add(found.target.toLowerCase());
        const read = { ...chart, ...place };
        const ours = reading.parse(chartPart(sheet, read));
        if (!ours || form(ours) !== form(root)) reading.leftOut.add('chartLooks');
        return [read];
      });
  });
}
