import { table } from '../scripts/table.js';
import type { Row } from './timing.js';

/** A time in the unit that a person reads it in. */
export function shownTime(milliseconds: number): string {
  if (milliseconds < 0.001) return `${(1e6 * milliseconds).toFixed(0)} ns`;
  if (milliseconds < 0.1) return `${(1000 * milliseconds).toFixed(1)} µs`;
  return milliseconds < 1000 ? `${milliseconds.toFixed(2)} ms` : `${(milliseconds / 1000).toFixed(2)} s`;
}

/** Work beside its reference; the ratio is what counts, since it hangs least on the machine. */
export const comparisonTable = (rows: readonly Row[]): string =>
  table(
    ['work', 'least time', 'reference', 'least time', 'ratio', 'aim'],
    rows.map(({ title, time, reference, referenceTime, aim }) => [
      title,
      shownTime(time),
      reference,
      shownTime(referenceTime),
      (time / referenceTime).toFixed(2),
      aim === undefined ? '' : String(aim),
    ]),
  );
