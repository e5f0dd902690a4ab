/** Milliseconds of a day. */
export const DAY = 86_400_000;
/** The day 0 of dates from March 1900 on; before, the calendar of worksheets has a day less. */
const ZERO = Date.UTC(1899, 11, 30);
export const FIRST_OF_MARCH_1900 = 61;
/** The last day of the year 9999. */
export const LATEST = 2_958_465;

/** The moment at which a day begins that a worksheet counts so. */
export const dateOf = (serial: number): Date =>
  new Date(ZERO + (Math.trunc(serial) + (serial < FIRST_OF_MARCH_1900 ? 1 : 0)) * DAY);

/** A moment, in milliseconds, as a worksheet counts it in days. */
export function serialOf(time: number): number {
  const serial = (time - ZERO) / DAY;
  return serial < FIRST_OF_MARCH_1900 ? serial - 1 : serial;
}
