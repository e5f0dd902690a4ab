import { LIMITS } from './limits.js';
import type { LeftOut, Reading } from './reading.js';

/** Parts of a file that the embedded workbook has no place for, by where they lie. */
const BY_PART: readonly (readonly [RegExp, LeftOut])[] = [
  [/\/chartsheets\/|\/macrosheets\/|\/dialogsheets\//, 'otherSheets'],
  [/\/media\/|\/embeddings\//, 'pictures'],
  [/vbaproject\.bin$/, 'macros'],
  [/\/pivottables\//, 'pivots'],
  [/\/threadedcomments\//, 'discussions'],
];

const CHART = /\/charts\/chart[^/]*\.xml$/;

/** What was not taken, in words, in the order of the dictionary. */
export function leftOutWords(names: readonly string[], { words, leftOut, drawn }: Reading): string[] {
  const charts = names.map((name) => name.toLowerCase()).filter((name) => CHART.test(`/${name}`));
  if (charts.some((name) => !drawn.has(name))) leftOut.add('charts');
  for (const name of names)
    for (const [place, what] of BY_PART) if (place.test(`/${name.toLowerCase()}`)) leftOut.add(what);
  const all = Object.keys(words.parts) as LeftOut[];
  return all
    .filter((one) => leftOut.has(one))
    .map((one) => {
      const word = words.parts[one];
      return typeof word === 'function' ? word(LIMITS.rows, LIMITS.columns) : word;
    });
}
