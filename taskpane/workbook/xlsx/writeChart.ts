import type { ChartSeries, SheetChart } from '../../../src/sheets/sheet.js';
import { strokeOf } from '../../host/strokes.js';
import type { BookCell, BookSheet } from './book.js';
import { placeOnSheet } from './names.js';
import { rectangleOf } from './readPlaces.js';
import { element, escaped, part } from './writeXml.js';

export const CHART = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
export const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006/main';

/** How wide a line is, in the file's own small unit: one and a half points. */
const LINE = 19_050;
/** In hundredths of a point: letters as large as those of cells stay as legible in print. */
const [TITLE, LETTERS] = [1200, 1100];
const [ACROSS, UPWARDS] = [1, 2];
const DASHES = { Continuous: 'solid', Dash: 'dash', Dot: 'sysDot', DashDot: 'dashDot' } as const;

const val = (name: string, value: string | number) => element(`c:${name}`, { val: value });

function cellsIn({ rows }: BookSheet, range: string): readonly (BookCell | undefined)[] {
  const found = rectangleOf(range);
  if (!found) return [];
  const { top, left, bottom, right } = found;
  return Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (__, c) => rows[top + r]?.[left + c]),
  ).flat();
}

/** A range with what its cells hold, so that a program draws it before it has calculated anything. */
function reference(sheet: BookSheet, range: string, words: boolean): string {
  const cells = cellsIn(sheet, range);
  const kind = words ? 'str' : 'num';
  const points = cells.flatMap((cell, idx) => {
    const value = cell?.value ?? '';
    return (words ? value === '' : typeof value !== 'number')
      ? []
      : [element('c:pt', { idx }, element('c:v', {}, escaped(String(value))))];
  });
  return element(
    `c:${kind}Ref`,
    {},
    element('c:f', {}, escaped(placeOnSheet(sheet.name, range))),
    element(
      `c:${kind}Cache`,
      {},
      ...(words ? [] : [element('c:formatCode', {}, 'General')]),
      val('ptCount', cells.length),
      ...points,
    ),
  );
}

const hasWords = (sheet: BookSheet, range: string): boolean =>
  cellsIn(sheet, range).some((cell) => typeof cell?.value === 'string' && cell.value !== '');

/** @param size in hundredths of a point. */
function title(text: string, size: number): string {
  if (text === '') return '';
  const words = element(
    'a:p',
    {},
    element('a:r', {}, element('a:rPr', { sz: size, b: size === TITLE ? 1 : 0 }), element('a:t', {}, escaped(text))),
  );
  const rich = element('c:rich', {}, element('a:bodyPr'), words);
  return element('c:title', {}, element('c:tx', {}, rich), val('overlay', 0));
}

/** The letters of an axis or a legend. */
const letters: string = element(
  'c:txPr',
  {},
  element('a:bodyPr'),
  element(
    'a:p',
    {},
    element('a:pPr', {}, element('a:defRPr', { sz: LETTERS })),
    element('a:endParaRPr', { lang: 'en' }),
  ),
);

const solid = (color: string) =>
  element('a:solidFill', {}, element('a:srgbClr', { val: color.slice(1).toUpperCase() }));

/** Lines and marks, told apart as on the sheets that the add-in puts into Excel. */
function strokes({ kind, series }: SheetChart, index: number): string {
  const { color, line, marker } = strokeOf(series, index);
  const as = series[index]?.kind ?? kind;
  if (as === 'bars') return element('c:spPr', {}, solid(color)) + val('invertIfNegative', 0);
  if (as === 'lines') {
    const dash = element('a:prstDash', { val: DASHES[line] });
    const drawn = element('c:spPr', {}, element('a:ln', { w: LINE, cap: 'rnd' }, solid(color), dash));
    return drawn + element('c:marker', {}, val('symbol', 'none'));
  }
  const mark = element('c:spPr', {}, solid(color), element('a:ln', {}, solid(color)));
  return (
    element('c:spPr', {}, element('a:ln', { w: LINE }, element('a:noFill'))) +
    element('c:marker', {}, val('symbol', marker.toLowerCase()), val('size', 6), mark)
  );
}

function seriesOf(sheet: BookSheet, chart: SheetChart, one: ChartSeries, index: number): string {
  const bars = chart.kind === 'bars';
  const [across, upwards] = bars ? ['c:cat', 'c:val'] : ['c:xVal', 'c:yVal'];
  return element(
    'c:ser',
    {},
    val('idx', index),
    val('order', index),
    element('c:tx', {}, one.named ? reference(sheet, one.named, true) : element('c:v', {}, escaped(one.name))),
    strokes(chart, index),
    element(across, {}, reference(sheet, one.across, hasWords(sheet, one.across))),
    element(upwards, {}, reference(sheet, one.upwards, false)),
    bars ? '' : val('smooth', 0),
  );
}

interface Axis {
  readonly name: 'catAx' | 'valAx';
  readonly id: number;
  readonly side: 'b' | 'l';
  readonly text: string;
  readonly turned?: boolean;
  /** Where the words of the axis stand. */
  readonly labels?: 'high';
  readonly lines: boolean;
}

const axis = ({ name, id, side, text, turned = false, labels, lines }: Axis): string =>
  element(
    `c:${name}`,
    {},
    val('axId', id),
    element('c:scaling', {}, val('orientation', turned ? 'maxMin' : 'minMax')),
    val('delete', 0),
    val('axPos', side),
    lines ? element('c:majorGridlines', {}, element('c:spPr', {}, element('a:ln', {}, solid('#d9d9d9')))) : '',
    title(text, LETTERS),
    element('c:numFmt', { formatCode: 'General', sourceLinked: 0 }),
    val('majorTickMark', 'out'),
    val('minorTickMark', 'none'),
    val('tickLblPos', labels ?? (name === 'catAx' ? 'low' : 'nextTo')),
    letters,
    val('crossAx', id === ACROSS ? UPWARDS : ACROSS),
    val('crosses', 'autoZero'),
    name === 'catAx' ? val('auto', 1) + val('lblOffset', 100) : val('crossBetween', 'between'),
  );

function drawn(sheet: BookSheet, chart: SheetChart): string {
  const series = chart.series.map((one, index) => seriesOf(sheet, chart, one, index));
  const ids = val('axId', ACROSS) + val('axId', UPWARDS);
  const [across, upwards] = [chart.across.title, chart.upwards.title];
  if (chart.kind !== 'bars') {
    const scatter = [val('scatterStyle', 'lineMarker'), val('varyColors', 0), ...series, ids];
    const below = axis({ name: 'valAx', id: ACROSS, side: 'b', text: across, lines: false });
    const beside = axis({ name: 'valAx', id: UPWARDS, side: 'l', text: upwards, lines: true });
    const between = (text: string) => text.replace('"between"', '"midCat"');
    return element('c:scatterChart', {}, ...scatter) + between(below) + between(beside);
  }
  const { upright = false } = chart;
  const bars = [val('barDir', upright ? 'col' : 'bar'), val('grouping', 'clustered'), val('varyColors', 0), ...series];
  // Lying bars run from the top like the rows that they come from; the figures stay at the foot.
  const names = axis({
    name: 'catAx',
    id: ACROSS,
    side: upright ? 'b' : 'l',
    text: across,
    turned: !upright,
    lines: false,
  });
  const figures = { name: 'valAx', id: UPWARDS, side: upright ? 'l' : 'b', text: upwards, lines: true } as const;
  return (
    element('c:barChart', {}, ...bars, val('gapWidth', 60), ids) +
    names +
    axis(upright ? figures : { ...figures, labels: 'high' })
  );
}

/** A chart as the file's own, drawn from the cells of its sheet. */
export function chartPart(sheet: BookSheet, chart: SheetChart): string {
  const legend = element('c:legend', {}, val('legendPos', 'b'), val('overlay', 0), letters);
  return part(
    element(
      'c:chartSpace',
      { 'xmlns:c': CHART, 'xmlns:a': DRAWING },
      val('roundedCorners', 0),
      element(
        'c:chart',
        {},
        title(chart.title, TITLE),
        val('autoTitleDeleted', chart.title === '' ? 1 : 0),
        element('c:plotArea', {}, element('c:layout'), drawn(sheet, chart)),
        chart.series.length > 1 ? legend : '',
        val('plotVisOnly', 0),
        val('dispBlanksAs', 'gap'),
      ),
    ),
  );
}
