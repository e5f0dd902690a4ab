import { render } from 'preact';
import type { ShownChart } from '../../host/shownChart.js';
import { type Setting, SettingContext } from '../../pane/setting.js';
import { ChartDrawing } from './ChartDrawing.js';

/** In pixels of paper: 148 by 80 millimetres. */
const SIZE = { width: 560, height: 302 };

/** A chart for paper: in the colours of paper, at a size that is the same on every sheet. */
export function printedChart(chart: ShownChart, setting: Setting): HTMLElement {
  const figure = document.createElement('figure');
  figure.className = 'printed-chart pb-colours';
  const drawing = (
    <SettingContext.Provider value={setting}>
      <figcaption>{chart.title}</figcaption>
      <ChartDrawing chart={chart} {...SIZE} paper />
    </SettingContext.Provider>
  );
  render(drawing, figure);
  return figure;
}
