import fc from 'fast-check';

// The same cases on every machine and every day; POWDERBOOK_SEED=random, or a number, tries others.
const given = process.env.POWDERBOOK_SEED;
if (given !== 'random') fc.configureGlobal({ seed: Number(given ?? 20_261_125) });

const most = Number(process.env.POWDERBOOK_CASES ?? Number.POSITIVE_INFINITY);

/** A number of cases or rows to try, or fewer where POWDERBOOK_CASES says so: mutation testing runs tests thousands of times. */
export const limited = (wanted: number): number => Math.min(wanted, most);

/** How many cases a property tries. One that does not say tries the library's hundred. */
export const cases = (wanted: number): { numRuns: number } => ({ numRuns: limited(wanted) });

fc.configureGlobal({ ...fc.readConfigureGlobal(), ...cases(100) });
