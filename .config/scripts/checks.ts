import type { Calculation } from '../../src/core/calculation.js';
import { CHECKS } from '../../tests/checks/all.js';
import { answerTo, givenInWords, type PublishedCheck } from '../../tests/checks/check.js';
import { PUBLICATIONS, publicationOf } from '../../tests/checks/publications.js';
import { WITHOUT_CHECK } from '../../tests/checks/without.js';
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
  const { calculation, given, row, expected, tolerance, source, kind } = check;
  const got = answerTo(check);
  return [
    calculation,
    `${givenInWords(given)}${row === undefined ? '' : `: ${row}`}`,
    shown(expected),
    shown(got),
    deviation(expected, got),
    typeof expected === 'string' ? '' : small(tolerance),
    source,
    KINDS[kind],
  ];
}

const HEADER = ['function', 'given', 'expected', 'got', 'deviation', 'tolerance', 'source', 'figure'];

/** Checks of a figure that a publication prints, or that was reckoned from readings or definitions printed there. */
const published = CHECKS.filter((check) => publicationOf(check) !== undefined);

const of = (kind: PublishedCheck['kind']): number => published.filter((check) => check.kind === kind).length;

const inOrder = (catalogue: readonly Calculation[], checks: readonly PublishedCheck[]): string[][] =>
  catalogue.flatMap(({ id }) => checks.filter(({ calculation }) => calculation === id).map(checkRow));

/** Every figure from outside that the tests hold the functions to, as Markdown. */
export function checksPage(catalogue: readonly Calculation[]): string {
  const checked = new Set(published.map(({ calculation }) => calculation));
  const cited = PUBLICATIONS.map(([title]) => [
    title,
    String(published.filter((check) => publicationOf(check) === title).length),
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

**${published.length} checks from ${cited.length} publications** hold ${checked.size} of ${catalogue.length} functions: ${of('published')} figures as printed,
${of('derived')} reckoned apart from this code from readings, definitions or formulas printed there, and ${of('from memory')} whose publication was not
at hand when they were written down. ${byHand.length} more were reckoned by hand. The tolerance is half a step of the last printed
digit where the source rounds; where the source rests on another equation or on a rounded constant it is wider, as its column says.

## Figures from publications

${table(HEADER, inOrder(catalogue, published))}

## Publications

A book, a paper, a regulation or a data set counts once, however many of its tables are used.

${table(['publication', 'checks'], cited)}

## Functions without a published check

${table(['functions', 'why there is none', 'what stands in', 'where'], without)}

## Figures reckoned by hand

${table(HEADER, inOrder(catalogue, byHand))}
`;
}
