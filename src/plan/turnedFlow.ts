import { cakePressureDrop, type Flowing } from '../cake/pressureDrop.js';
import { boundary } from '../numerics/boundary.js';
import type { RunPlan } from './input.js';

/** Share of the flow at which the run ends by pressure: 1 where it is not turned down. */
export const lastShare = ({ leastFlow, flow }: RunPlan): number =>
  leastFlow > 0 && leastFlow < flow ? leastFlow / flow : 1;

/** The same flow, less of it. */
export const turnedTo = (flowing: Flowing, share: number): Flowing =>
  share === 1 ? flowing : { ...flowing, flux: flowing.flux * share };

/** Pressure drop of start and cake where the flow is turned down to a share, Pa. */
export const dropAt = (start: number, flat: number, flowing: Flowing, share: number): number =>
  start * share + cakePressureDrop(flat, turnedTo(flowing, share));

/** The share of the flow that holds the pressure drop at its limit over a cake of this flat load. */
export function shareHolding(limit: number, start: number, flat: number, flowing: Flowing): number {
  if (dropAt(start, flat, flowing, 1) <= limit) return 1;
  if (flowing.compressibility === 0) return limit / dropAt(start, flat, flowing, 1);
  return boundary((share) => dropAt(start, flat, flowing, share) > limit, 0, 1).before;
}

/** Panels of Simpson’s rule over the shares of the flow. */
const PANELS = 128;

/**
 * ∫ dV / share from the full flow, or a share of it, down to a share, with the beer until each share in closed form: by parts
 * Δ(V / share) − ∫ V / share² d share, which is smooth on a candle, too, where the last beer takes most of the volume.
 */
export function slowed(share: number, volumeAt: (share: number) => number, from = 1): number {
  const step = (from - share) / PANELS;
  let sum = 0;
  for (let at = 0; at <= PANELS; at++) {
    const weight = at === 0 || at === PANELS ? 1 : at % 2 === 1 ? 4 : 2;
    const one = share + at * step;
    sum += (weight * volumeAt(one)) / one ** 2;
  }
  return volumeAt(share) / share - volumeAt(from) / from - (sum * step) / 3;
}
