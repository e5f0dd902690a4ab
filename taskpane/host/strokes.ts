import type { ChartSeries } from '../../src/sheets/sheet.js';

/** Told apart by their strokes and marks as well as by their colours. */
export const STROKES = [
  { color: '#0f6a73', line: 'Continuous', marker: 'Circle' },
  { color: '#b5551c', line: 'Dash', marker: 'Diamond' },
] as const;

/** What is drawn otherwise than its chart belongs to the series before it, and takes its colour. */
export function strokeOf(series: readonly ChartSeries[], index: number): (typeof STROKES)[number] {
  const before = series.slice(0, index + 1).filter(({ kind }) => kind === undefined).length - 1;
  return STROKES[Math.max(0, before) % STROKES.length] ?? STROKES[0];
}
