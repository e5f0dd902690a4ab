import type { ChartSeries, SheetChart } from '../../../src/sheets/sheet.js';
import { a1 } from '../../host/a1.js';
import { STROKES } from '../../host/strokes.js';
import { rectangleOf } from './readPlaces.js';
import { attribute, childOf, childrenOf, type XmlElement } from './readXml.js';

const MOST = { series: 20, points: 20_000, letters: 300 } as const;

const valOf = (element: XmlElement | undefined, ...way: readonly string[]) =>
  attribute(childOf(element, ...way), 'val');

/** All words below an element, such as those of a title in several looks. */
function words(element: XmlElement | undefined): string {
  const parts = childrenOf(element).map((one) =>
    one.localName === 't' || one.localName === 'v' ? (one.textContent ?? '') : words(one),
  );
  return parts.join('').slice(0, MOST.letters);
}

const titleOf = (element: XmlElement | undefined): string => words(childOf(element, 'title'));

/** The range that an element reads, where it is one row or column of the sheet itself. */
function rangeOf(element: XmlElement | undefined, sheet: string): string | undefined {
  const text = childrenOf(element).flatMap((one) => childOf(one, 'f')?.textContent ?? [])[0];
  const [, name = '', range = ''] = /^(.+)!([^!]+)$/.exec(text ?? '') ?? [];
  if (
    name
      .replace(/^'(.*)'$/, '$1')
      .replaceAll("''", "'")
      .toLowerCase() !== sheet.toLowerCase()
  )
    return undefined;
  const found = rectangleOf(range.replaceAll('$', ''));
  if (!found) return undefined;
  const { top, left, bottom, right } = found;
  const points = (bottom - top + 1) * (right - left + 1);
  if ((top !== bottom && left !== right) || points > MOST.points) return undefined;
  return points === 1 ? a1(top, left) : `${a1(top, left)}:${a1(bottom, right)}`;
}

/** Whether a line is drawn between the points of a series in a chart of points. */
function isLine(series: XmlElement): boolean {
  return childOf(series, 'spPr', 'ln', 'noFill') === undefined;
}

interface Drawn {
  readonly kind: SheetChart['kind'];
  readonly group: XmlElement;
  readonly upright?: true;
}

/** The one group of series in a chart of a kind that the pane draws. */
function drawnOf(area: XmlElement | undefined): Drawn | undefined {
  const groups = childrenOf(area).filter(({ localName }) => localName?.endsWith('Chart'));
  const [group] = groups;
  if (!group || groups.length > 1) return undefined;
  const series = childrenOf(group, 'ser');
  if (series.length === 0 || series.length > MOST.series) return undefined;
  if (group.localName === 'scatterChart') {
    return { kind: isLine(series[0] as XmlElement) ? 'lines' : 'points', group };
  }
  const plain = group.localName === 'barChart' && (valOf(group, 'grouping') ?? 'clustered') === 'clustered';
  if (!plain || series.length > STROKES.length) return undefined;
  return { kind: 'bars', group, ...(valOf(group, 'barDir') === 'bar' ? {} : { upright: true as const }) };
}

function seriesOf(one: XmlElement, kind: SheetChart['kind'], sheet: string): ChartSeries | undefined {
  const [x, y] = kind === 'bars' ? ['cat', 'val'] : ['xVal', 'yVal'];
  const [across, upwards] = [rangeOf(childOf(one, x as string), sheet), rangeOf(childOf(one, y as string), sheet)];
  if (!across || !upwards) return undefined;
  const named = rangeOf(childOf(one, 'tx'), sheet);
  const as = kind === 'bars' ? kind : isLine(one) ? 'lines' : 'points';
  return {
    name: words(childOf(one, 'tx')),
    ...(named ? { named } : {}),
    ...(as === kind || as === 'bars' ? {} : { kind: as }),
    across,
    upwards,
  };
}

/** A chart of a file, but for its place; nothing where it is of a kind that the pane cannot draw. */
export function chartOf(root: XmlElement | undefined, sheet: string): Omit<SheetChart, 'place'> | undefined {
  const area = childOf(root, 'chart', 'plotArea');
  const drawn = drawnOf(area);
  if (!drawn) return undefined;
  const { kind, group, upright } = drawn;
  const series = childrenOf(group, 'ser').map((one) => seriesOf(one, kind, sheet));
  const axes = childrenOf(area).filter(({ localName }) => localName === 'catAx' || localName === 'valAx');
  const ids = childrenOf(group, 'axId').map((one) => attribute(one, 'val'));
  const [across, upwards] = ids.map((id) => axes.find((one) => valOf(one, 'axId') === id));
  if (axes.length !== 2 || !across || !upwards || series.some((one) => one === undefined)) return undefined;
  return {
    title: titleOf(childOf(root, 'chart')),
    kind,
    ...(upright ? { upright } : {}),
    across: { title: titleOf(across) },
    upwards: { title: titleOf(upwards) },
    series: series.filter((one) => one !== undefined),
  };
}
