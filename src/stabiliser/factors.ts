/**
 * How many g of one kind do the work of 1 g of another: common practice, no source, for doses as bought at
 * 65, 5 and 1 % moisture. `position` runs from 0, the low end of the range, to 1, its high end.
 */
export const KINDS = ['hydrogel', 'xerogel', 'adsorptive'] as const;
export type Kind = (typeof KINDS)[number];

/** The moisture at which the factors hold for a dose as bought. */
export const REFERENCE_MOISTURE: Readonly<Record<Kind, number>> = { hydrogel: 0.65, xerogel: 0.05, adsorptive: 0.01 };

const atMoisture = KINDS.map((kind) => `${kind} ${Math.round(REFERENCE_MOISTURE[kind] * 100)} %`).join(', ');
export const FACTOR_SOURCE = `Factor ranges: common practice, no source, for doses as bought at the moisture of ${atMoisture}.`;

const between = (low: number, high: number, position: number): number => low + (high - low) * position;

const hydrogelToAdsorptive = (position: number): number => between(0.7, 1, position);
const xerogelToAdsorptive = (position: number): number => between(1.5, 2, position);
const same = (): number => 1;

const TO_ADSORPTIVE: Readonly<Record<Kind, (position: number) => number>> = {
  hydrogel: hydrogelToAdsorptive,
  xerogel: xerogelToAdsorptive,
  adsorptive: same,
};

/**
 * Factor from one kind to another. The way back runs at 1 − position, so that there and back returns the dose;
 * between the gels the way leads over the adsorptive filter aid.
 */
export function swapFactor(from: Kind, to: Kind, position: number): number {
  if (from === to) return 1;
  return TO_ADSORPTIVE[from](position) / TO_ADSORPTIVE[to](1 - position);
}
