import fc from 'fast-check';

// The same cases on every machine and every day; POWDERBOOK_SEED=random, or a number, tries others.
const given = process.env.POWDERBOOK_SEED;
if (given !== 'random') fc.configureGlobal({ seed: Number(given ?? 20_261_125) });
