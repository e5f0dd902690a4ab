import { calculation } from '../core/calculation.js';
import type { Cell, PlanLabel, PlanRefusal } from '../core/input.js';
import { readLabels, readValue } from '../core/plan.js';
import { isRefused, refused } from '../core/read.js';
import { figure } from '../core/wording.js';
import { verdict } from '../safety/rangeCheck.js';
import { planRefusal } from './cakeRefusal.js';
import { yearRefusalOf } from './capacity.js';
import { EXAMPLE } from './example.js';
import { planInput, YEAR_GROUPS } from './input.js';
import { PLAN } from './table.js';

const labelOf = (key: string): PlanLabel => PLAN[key as keyof typeof PLAN];

/** The rules between labels, over whatever values can be read. */
function brokenRule(keys: readonly (string | undefined)[], values: readonly Cell[]): PlanRefusal | undefined {
  const readable: Record<string, number | undefined> = {};
  for (const [row, key] of keys.entries()) {
    const value = key === undefined ? undefined : readValue(labelOf(key), values[row] ?? null);
    if (key !== undefined && !isRefused(value)) readable[key] = value;
  }
  return planRefusal(readable) ?? yearRefusalOf(readable);
}

function judge(label: PlanLabel, cell: Cell): string {
  const value = readValue(label, cell);
  if (isRefused(value)) return `refused: ${value.refused}`;
  if (value === undefined) return 'usual';
  if (value === 0 && label.askedAtZero)
    return `unusual: ${label.label} is 0 or blank. Is it nothing, or not yet known?`;
  return verdict({ kind: 'plan label', ...label }, cell);
}

type Given = (key: string) => number | undefined;

/** A feed that the plan itself calls too little for clear beer. */
function tooLittle(given: Given): PlanRefusal | undefined {
  const [feed, least] = [given('bodyFeed'), given('leastFeed')];
  return feed !== undefined && least !== undefined && feed < least
    ? {
        keys: ['bodyFeed'],
        sentence: `${PLAN.bodyFeed.label} lies below ${PLAN.leastFeed.label}, ${figure(least, PLAN.leastFeed.unit)}: the beer would not be clear.`,
      }
    : undefined;
}

/** What no figure can tell by itself, asked where it matters: which fit a compressible cake's resistance is of. */
function asked(given: Given): PlanRefusal | undefined {
  const compressibility = given('compressibility');
  if (compressibility === undefined || !(compressibility > 0)) return undefined;
  return given('cakeResistance') !== undefined
    ? {
        keys: ['cakeResistance'],
        sentence:
          'With a Compressibility this is read as Resistance at 1 bar. Is it that of FITCAKE or FITCOMPRESSION, with the Exponent of the same fit? Cake resistance of FITRUN is a mean over its log.',
      }
    : {
        keys: ['aidPermeability', 'beerSolidsPermeability'],
        sentence:
          'With a Compressibility this is read as the permeability at 1 bar. Was FITFEED given the same Compressibility?',
      };
}

export const planCheck = calculation({
  id: 'PLANCHECK',
  summary: 'Beside each label of a plan: usual, unusual or refused.',
  question: 'Does every figure of my plan make sense?',
  inputs: { labels: { ...planInput(YEAR_GROUPS), judged: true } },
  output: { kind: 'column', label: 'Verdict' },
  method:
    'limits first, then the usual range, then what does not go together, a year of more hours than a filter has among it, then questions: where a price or a dose is 0 or blank, where the feed lies below the least for clarity, and where a compressible cake may have got a figure of another fit; one answer beside each label, so put it in the row of the first. What is missing is said by the functions that need it',
  sources: ['The declarations of the plan’s labels.'],
  cautions: ['pressure'],
  example: { given: { labels: EXAMPLE }, result: Object.keys(EXAMPLE.values).map(() => 'usual') },
  compute: ({ labels: { labels, columns } }) => {
    if (labels.length === 0) return refused('Labels is an empty range.');
    const values = columns.values ?? [];
    const rows = readLabels({ table: PLAN }, labels);
    const keys = rows.map((row) => (row === undefined || isRefused(row) ? undefined : row.key));
    const broken = brokenRule(keys, values);
    const given: Given = (key) => {
      const value = keys.includes(key) ? readValue(labelOf(key), values[keys.indexOf(key)] ?? null) : undefined;
      return isRefused(value) ? undefined : value;
    };
    const questions = [tooLittle(given), asked(given)];
    return rows.map((row, index) => {
      if (row === undefined) return '';
      if (isRefused(row)) return `refused: ${row.refused}`;
      const said = judge(labelOf(row.key), values[index] ?? null);
      if (said.startsWith('refused')) return said;
      if (broken?.keys.includes(row.key)) return `refused: ${broken.sentence}`;
      const question = questions.find((one) => one?.keys.includes(row.key));
      return said === 'usual' && question ? `unusual: ${question.sentence}` : said;
    });
  },
});
