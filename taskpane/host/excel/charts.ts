import { USUAL_FONT } from '../../../src/sheets/paper.js';
import type { SheetChart } from '../../../src/sheets/sheet.js';
import { strokeOf } from '../strokes.js';

const TYPES = { lines: 'XYScatterLinesNoMarkers', points: 'XYScatter', bars: 'BarClustered' } as const;

function drawSeries(sheet: Excel.Worksheet, chart: Excel.Chart, { kind, series }: SheetChart, index: number): void {
  const one = series[index];
  if (!one) return;
  // The range that a chart is made from is its first series already.
  const drawn = index === 0 ? chart.series.getItemAt(0) : chart.series.add(one.name);
  const { color, line, marker } = strokeOf(series, index);
  const as = one.kind ?? kind;
  drawn.name = one.name;
  drawn.chartType = TYPES[as];
  drawn.setXAxisValues(sheet.getRange(one.across));
  drawn.setValues(sheet.getRange(one.upwards));
  if (as === 'bars') {
    drawn.format.fill.setSolidColor(color);
  } else if (as === 'lines') {
    drawn.format.line.color = color;
    drawn.format.line.lineStyle = line;
  } else {
    drawn.markerStyle = marker;
    drawn.markerBackgroundColor = color;
    drawn.markerForegroundColor = color;
  }
}

/** Queues one native chart. */
function addChart(sheet: Excel.Worksheet, one: SheetChart): void {
  const [first] = one.series;
  if (!first) return;
  const chart = sheet.charts.add(TYPES[one.kind], sheet.getRange(first.upwards), 'Columns');
  for (const index of one.series.keys()) drawSeries(sheet, chart, one, index);
  chart.title.text = one.title;
  chart.axes.categoryAxis.title.text = one.across.title;
  chart.axes.valueAxis.title.text = one.upwards.title;
  // Letters as large as those of cells stay as legible in print.
  chart.format.font.size = USUAL_FONT;
  if (one.kind === 'bars') {
    // Bars run from the top like the rows that they come from; the figures stay at the foot.
    chart.axes.categoryAxis.reversePlotOrder = true;
    chart.axes.valueAxis.tickLabelPosition = 'High';
  }
  chart.legend.visible = one.series.length > 1;
  chart.legend.position = 'Bottom';
  const [from = one.place, to = from] = one.place.split(':');
  chart.setPosition(from, to);
}

export function addCharts(sheet: Excel.Worksheet, charts: readonly SheetChart[]): void {
  for (const chart of charts) addChart(sheet, chart);
}
