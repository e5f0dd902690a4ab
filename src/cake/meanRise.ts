import { cakePressureDrop, type Flowing, flatLoad, resistanceTaking, type Septum } from './pressureDrop.js';

/** A run at constant flow between two times since its first beer, SI. */
export interface Stretch extends Septum {
  readonly flux: number;
  readonly viscosity: number;
  /** Dry solids to the cake, kg per m³ of beer. */
  readonly solids: number;
  readonly precoatLoad: number;
  readonly compressibility: number;
  readonly from: number;
  readonly until: number;
}

/** On a flat septum a rigid cake rises alike throughout, so that the time does not matter. */
export const isSteady = ({ septumRadius, compressibility }: Pick<Stretch, 'septumRadius' | 'compressibility'>) =>
  septumRadius === 0 && compressibility === 0;

/** Flat load of the solids laid until a time. */
const laidAt = (stretch: Stretch, time: number): number =>
  flatLoad(stretch.solids * stretch.flux * time, stretch, stretch.precoatLoad);

/** Mean rise over the stretch, Pa/s: what the pressure drop gains from its beginning to its end, over the time. */
export function meanRise(stretch: Stretch, resistance: number): number {
  if (isSteady(stretch)) return stretch.viscosity * stretch.flux ** 2 * resistance * stretch.solids;
  const flowing: Flowing = { ...stretch, resistance };
  const at = (time: number) => cakePressureDrop(laidAt(stretch, time), flowing);
  return (at(stretch.until) - at(stretch.from)) / (stretch.until - stretch.from);
}

/** The resistance, at 1 bar where the cake is compressible, that rises so much in the mean: the inverse of `meanRise`. */
export function resistanceOfRise(stretch: Stretch, rise: number): number {
  if (isSteady(stretch)) return rise / (stretch.viscosity * stretch.flux ** 2 * stretch.solids);
  const gained = rise * (stretch.until - stretch.from);
  return resistanceTaking(gained, laidAt(stretch, stretch.from), laidAt(stretch, stretch.until), stretch);
}
