import type { ChartSeries } from '../../src/sheets/sheet.js';

/** Told apart by their strokes and marks as well as by their colours. */
export const STROKES = [
  { color: '#0f6a73', line: 'Continuous', marker: 'Circle' },
  { color: '#b5551c', line: 'Dash', marker: 'Diamond' },
  { color: '#3b5a9d', line: 'Dot', marker: 'Triangle' },
  { color: '#7a3b8f', line: 'DashDot', marker: 'X' },
] as const;

/** Which look a series has. What is drawn otherwise than its chart belongs to the series before it, and looks alike. */
export function setOf(series: readonly Pick<ChartSeries, 'kind'>[], index: number): 0 | 1 | 2 | 3 {
  const before = series.slice(0, index + 1).filter(({ kind }) => kind === undefined).length - 1;
  return (Math.max(0, before) % STROKES.length) as 0 | 1 | 2 | 3;
}

export const strokeOf = (series: readonly ChartSeries[], index: number): (typeof STROKES)[number] =>
  STROKES[setOf(series, index)];
