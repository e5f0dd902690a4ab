import { figure } from '../core/wording.js';

/** A stretch of equal readings is worth a word from so many rows, and from this share of the log. */
const STUCK_ROWS = 5;
const STUCK_SHARE = 0.1;
/** A gap is a step so many times the mean one, and at least this share of the log. */
const GAP_STEPS = 10;
const GAP_SHARE = 0.1;

interface Found {
  readonly back: number;
  readonly repeated: number;
  readonly zero: number;
  readonly stuck: number;
  readonly step: number;
  readonly span: number;
}

function look(volumes: Float64Array, pressures: Float64Array): Found {
  let back = 0;
  let repeated = 0;
  let zero = pressures[0] === 0 ? 1 : 0;
  let stuck = 0;
  let still = 1;
  let step = 0;
  let least = volumes[0] as number;
  let most = least;
  for (let row = 1; row < volumes.length; row++) {
    const volume = volumes[row] as number;
    const grown = volume - (volumes[row - 1] as number);
    if (grown < 0) back++;
    if (grown === 0) repeated++;
    if (grown > step) step = grown;
    if (volume < least) least = volume;
    if (volume > most) most = volume;
    if (pressures[row] === 0) zero++;
    still = grown > 0 && pressures[row] === pressures[row - 1] ? still + 1 : 1;
    if (still > stuck) stuck = still;
  }
  return { back, repeated, zero, stuck, step, span: most - least };
}

const rows = (count: number): string => `${count} ${count === 1 ? 'row' : 'rows'}`;

/** What looks odd in a log of a run, row by row. Every row still counts in the fit. */
export function logRemark(volumes: Float64Array, pressures: Float64Array): string {
  const { back, repeated, zero, stuck, step, span } = look(volumes, pressures);
  const count = volumes.length;
  const odd = [
    back > 0 && `the volume falls in ${rows(back)} (out of order, or more than one run)`,
    repeated > 0 && `the volume stands still in ${rows(repeated)} (pump stopped, or logged twice)`,
    stuck >= Math.max(STUCK_ROWS, STUCK_SHARE * count) &&
      `the gauge shows the same through ${rows(stuck)} (stuck, or not read)`,
    zero > 1 && `the pressure drop is 0 or blank in ${rows(zero)}`,
    back === 0 && step > Math.max((GAP_STEPS * span) / count, GAP_SHARE * span) && `a gap of ${figure(step, 'hL')}`,
  ].filter((remark) => remark !== false);
  return odd.length === 0 ? 'in order' : `${odd.join('; ')}. All rows were used: take out what does not belong`;
}
