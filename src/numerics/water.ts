/**
 * Liquid water at 0.1 MPa after IAPWS SR6-08 (Revised Supplementary Release on Properties of Liquid Water at
 * 0.1 MPa, 2011), which holds from 253.15 to 383.15 K.
 */
const GAS_CONSTANT = 461.51805; // J/(kg K)
const PRESSURE = 1e5; // Pa
const SCALE = 10; // K
const UPPER = 593; // K
const LOWER = 232; // K

/** Coefficient and exponent of each term of the specific volume, in 10 K / (593 K − T). */
const WARM_TERMS = [
  [1.93763157e-2, 0],
  [6.74458446e3, 4],
  [-2.22521604e5, 5],
  [1.00231247e8, 7],
  [-1.63552118e9, 8],
  [8.32299658e9, 9],
] as const;

/** The same in 10 K / (T − 232 K). */
const COLD_TERMS = [
  [5.78545292e-3, 1],
  [-1.53195665e-2, 2],
  [3.11337859e-2, 3],
  [-4.23546241e-2, 4],
  [3.38713507e-2, 5],
  [-1.19946761e-2, 6],
] as const;

/** Coefficient in µPa·s and exponent of T / 300 K. */
const VISCOSITY_TERMS = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
] as const;

const powers = (terms: readonly (readonly [number, number])[], base: number): number =>
  terms.reduce((sum, [coefficient, exponent]) => sum + coefficient * base ** exponent, 0);

/** @param temperature K @returns kg/m³ */
export function waterDensityAt(temperature: number): number {
  const warm = powers(WARM_TERMS, SCALE / (UPPER - temperature));
  const cold = powers(COLD_TERMS, SCALE / (temperature - LOWER));
  return PRESSURE / (GAS_CONSTANT * SCALE * (warm + cold));
}

/** @param temperature K @returns Pa·s */
export const waterViscosityAt = (temperature: number): number => powers(VISCOSITY_TERMS, temperature / 300) * 1e-6;
