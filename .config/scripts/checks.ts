import type { Calculation } from '../../src/core/calculation.js';
import { CHECKS } from '../../tests/checks/all.js';
import { answerTo, givenInWords, type PublishedCheck, placeInWords } from '../../tests/checks/check.js';
import { PUBLICATIONS, publicationOf } from '../../tests/checks/publications.js';
import { WITHOUT_CHECK } from '../../tests/checks/without.js';
import { sheetChanges } from './sheetChanges.js';
import { table } from './table.js';

/** Ten digits: no machine differs there. */
const shown = (value: unknown): string =>
  typeof value === 'number' ? String(Number(value.toPrecision(10))) : String(value);

const small = (share: number): string => (share < 1e-12 ? 'below 1e-12' : share.toExponential(1));

/** How far the answer is from the figure, relative to it. */
function deviation(expected: number | string, got: unknown): string {
  if (typeof expected === 'string' || typeof got !== 'number') return got === expected ? 'the same' : 'another answer';
  return expected === 0 ? small(Math.abs(got)) : small(Math.abs(got / expected - 1));
}

const KINDS = { published: 'published', derived: 'reckoned', 'from memory': 'from memory' } as const;

function checkRow(check: PublishedCheck): string[] {
  const { calculation, given, expected, tolerance, source, kind, wider } = check;
  const place = placeInWords(check);
  const got = answerTo(check);
  return [
    calculation,
    `${givenInWords(given)}${place && `: ${place}`}`,
    shown(expected),
    shown(got),
    deviation(expected, got),
    typeof expected === 'string' ? '' : `${small(tolerance)}${wider === undefined ? '' : ` (wider: ${wider})`}`,
    source,
    KINDS[kind],
  ];
}

const HEADER = ['function', 'given', 'expected', 'got', 'deviation', 'tolerance', 'source', 'figure'];

/** Checks of a figure that a publication prints, or that was reckoned from readings or definitions printed there. */
const published = CHECKS.filter((check) => publicationOf(check) !== undefined);

/** A table that tries one step of arithmetic again and again is one check. */
const counted = (checks: readonly PublishedCheck[]): number =>
  new Set(checks.map(({ table: one }, place) => one ?? place)).size;

const of = (kind: PublishedCheck['kind']): number => counted(published.filter((check) => check.kind === kind));

function distance(check: PublishedCheck): number {
  const got = answerTo(check);
  return typeof got === 'number' && typeof check.expected === 'number' ? Math.abs(got / check.expected - 1) : 0;
}

/** Of a table that counts once, the row that lies furthest off, with how many there are. */
function tableRow(checks: readonly PublishedCheck[]): string[] {
  const furthest = checks.reduce((one, other) => (distance(other) > distance(one) ? other : one));
  const [calculation = '', given = '', ...rest] = checkRow(furthest);
  return [calculation, `${checks.length} rows; furthest off: ${given}`, ...rest];
}

const inOrder = (catalogue: readonly Calculation[], checks: readonly PublishedCheck[]): string[][] =>
  catalogue.flatMap(({ id }) => {
    const own = checks.filter(({ calculation }) => calculation === id);
    const tables = [...new Set(own.flatMap(({ table: one }) => one ?? []))];
    return [
      ...own.filter(({ table: one }) => one === undefined).map(checkRow),
      ...tables.map((name) => tableRow(own.filter(({ table: one }) => one === name))),
    ];
  });

/** Every figure from outside that the tests hold the functions to, as Markdown. */
export function checksPage(catalogue: readonly Calculation[]): string {
  const checked = new Set(published.map(({ calculation }) => calculation));
  const cited = PUBLICATIONS.map(([title]) => [
    title,
    String(counted(published.filter((check) => publicationOf(check) === title))),
  ]);
  const byHand = CHECKS.filter((check) => publicationOf(check) === undefined);
  const without = WITHOUT_CHECK.map(({ functions, why, standsIn, tests }) => [
    functions.join(', '),
    why,
    standsIn,
    tests.map((name) => `\`${name}\``).join(', '),
  ]);
  return `# Checks against published figures

Made by \`npm run docs\` from \`tests/checks\`; do not edit by hand. Deviations are calculated when this page is made, and
\`npm test\` fails where one is above its tolerance.

**${counted(published)} checks from ${cited.length} publications** hold ${checked.size} of ${catalogue.length} functions: ${of('published')} figures as printed,
${of('derived')} reckoned apart from this code from readings, definitions or formulas printed there, and ${of('from memory')} whose publication was not
at hand when they were written down. ${byHand.length} more were reckoned by hand. A table that tries one
division again and again counts once. The tolerance is half a step of the last printed digit, at most a whole one where a figure was
reckoned from such; ${published.filter(({ wider }) => wider !== undefined).length} are wider, and their column says why.

## Figures from publications

${table(HEADER, inOrder(catalogue, published))}

## Publications

A book, a paper, a regulation or a data set counts once, however many of its tables are used.

${table(['publication', 'checks'], cited)}

## Functions without a published check

${table(['functions', 'why there is none', 'what stands in', 'where'], without)}

## Starter sheets, changed

After each of these changes every answer of the sheet is what a calculation apart from it gives, or names the cell that is
not sound (\`tests/sheets/spoiled.test.ts\`, \`rows.test.ts\`, \`logs.test.ts\`, \`trialLists.test.ts\`). \`npm run spoil\` makes them all, \`npm test\` a part;
of a list the first and the last row of its example are spoiled. Left out are a blank that stands for 0 by its declaration
and a hundredfold that is within the limits.

${sheetChanges()}

## Figures reckoned by hand

${table(HEADER, inOrder(catalogue, byHand))}
`;
}
