/** The pressure at which the resistance of a compressible cake is given, Pa. */
export const REFERENCE = 1e5;

/** The surface on which a cake grows, SI. Radius 0 is a flat septum. */
export interface Septum {
  readonly septumRadius: number;
  readonly cakeDensity: number;
}

/** How hard the beer is pushed through the cake, SI. */
export interface Flowing {
  readonly flux: number;
  readonly viscosity: number;
  readonly resistance: number;
  readonly compressibility: number;
}

/** Load at which the layer outside a cylinder is as thick as to double the area half-way: ρ r / 2. */
const roundness = ({ septumRadius, cakeDensity }: Septum): number => (cakeDensity * septumRadius) / 2;

/** The load on a flat septum that resists as much as this load does, laid on what was there before. */
export function flatLoad(load: number, septum: Septum, before = 0): number {
  if (septum.septumRadius === 0) return load;
  const round = roundness(septum);
  return round * Math.log1p(load / (round + before));
}

/** The inverse of `flatLoad`. */
export function loadOfFlat(flat: number, septum: Septum, before = 0): number {
  if (septum.septumRadius === 0) return flat;
  const round = roundness(septum);
  return (round + before) * Math.expm1(flat / round);
}

/** How fast `flatLoad` grows with the load. */
export function flatPerLoad(load: number, septum: Septum, before = 0): number {
  if (septum.septumRadius === 0) return 1;
  const round = roundness(septum);
  return round / (round + before + load);
}

/** Relative growth of the load on a cylinder per relative growth of its flat equivalent; 1 on a flat septum. */
export function loadGrowth(flat: number, septum: Septum): number {
  if (septum.septumRadius === 0 || flat === 0) return 1;
  const ratio = flat / roundness(septum);
  return -ratio / Math.expm1(-ratio);
}

const perFlatLoad = ({ flux, viscosity, resistance }: Flowing): number => flux * viscosity * resistance;

/** Pressure drop over a cake of this flat load, Pa: Δp^(1−n) = μ u α₁ w (1 bar)^−n. */
export function cakePressureDrop(flat: number, flowing: Flowing): number {
  const rigid = perFlatLoad(flowing) * flat;
  return flowing.compressibility === 0 ? rigid : REFERENCE * (rigid / REFERENCE) ** (1 / (1 - flowing.compressibility));
}

/** The flat load at which the cake takes this pressure drop: the inverse of `cakePressureDrop`. */
export function flatLoadAt(pressure: number, flowing: Flowing): number {
  const rigid = REFERENCE * (pressure / REFERENCE) ** (1 - flowing.compressibility);
  return rigid / perFlatLoad(flowing);
}

/** The resistance at which the pressure drop gains so much between two flat loads. */
export function resistanceTaking(
  gained: number,
  from: number,
  to: number,
  flowing: Omit<Flowing, 'resistance'>,
): number {
  const power = 1 / (1 - flowing.compressibility);
  const unit = flowing.flux * flowing.viscosity;
  return (REFERENCE / unit) * (gained / REFERENCE / (to ** power - from ** power)) ** (1 / power);
}

/** How fast the pressure drop grows with the flat load, Pa per kg/m². */
export function pressurePerLoad(flat: number, flowing: Flowing): number {
  const power = 1 / (1 - flowing.compressibility);
  const slope = perFlatLoad(flowing);
  return power * slope * ((slope * flat) / REFERENCE) ** (power - 1);
}
