import { anyOf, spanInWords } from '../core/wording.js';
import { isChoice } from './declared.js';
import type { At } from './layout.js';
import type { Block, Given } from './list.js';
import { quotedText } from './verdict.js';

type Step = (rest: string) => string;

const END = 'The list ends here: insert rows above.';
/** Stands for the number of the row until the end: a text that is the same in every row is made once. */
const ROW_NUMBER = '#';

const topOf = (range: string): string => range.split(':')[0] as string;

/** What is said of a cell of each row; only the row’s number differs. */
const saidOf = (look: 'refused' | 'unusual', range: string, words: string): string =>
  `"${look}: "&SUBSTITUTE(ADDRESS(1,COLUMN(${topOf(range)}),4),1,"${ROW_NUMBER}")&${quotedText(` ${words}`)}`;

const step =
  (condition: string, answer: string): Step =>
  (rest) =>
    `IF(${condition},${answer},${rest})`;

/** Why a cell of the column is not what it should be: missing, or outside what is declared. */
function asked(range: string, { label, declared, mayBeBlank }: Given): Step {
  const missing = saidOf('refused', range, `${label} is missing.`);
  const orMissing = (words: string): string => {
    const wrong = saidOf('refused', range, words);
    return mayBeBlank ? wrong : `IF(LEN(${range})=0,${missing},${wrong})`;
  };
  if (!declared)
    return (rest) =>
      `IF(ISERROR(${range}),${saidOf('refused', range, `${label} is an error.`)},IF(LEN(${range})=0,${missing},${rest}))`;
  const blank = mayBeBlank ? `(LEN(${range})=0)+` : '';
  if (isChoice(declared)) {
    const known = `${blank}ISNUMBER(MATCH(${range},{${declared.of.map(quotedText).join(',')}},0))`;
    return (rest) => `IF(${known},${rest},${orMissing(`${label} must be ${anyOf(declared.of)}.`)})`;
  }
  const { limit, unit } = declared;
  const within = `IFERROR(${blank}ISNUMBER(${range})*(${range}>=${limit[0]})*(${range}<=${limit[1]}),0)`;
  return (rest) =>
    `IF(${within},${rest},${orMissing(`${label} must be ${unit === 'fraction' ? '' : 'a number '}${spanInWords(limit, unit)}.`)})`;
}

function odd(range: string, { label, declared, mayBeBlank }: Given): readonly Step[] {
  if (!declared || isChoice(declared) || !declared.usual) return [];
  const [least, most] = declared.usual;
  const given = mayBeBlank ? `(LEN(${range})>0)*` : '';
  const words = `${label} is usually ${spanInWords(declared.usual, declared.unit)}.`;
  return [step(`${given}((${range}<${least})+(${range}>${most}))`, saidOf('unusual', range, words))];
}

/** What each row of a list is: `complete`, empty, or the first of its cells that is refused or unusual, with why. */
export function stateOf({ given, rules, name }: Block, at: At): string {
  const column = (key: string) => at(`${name}.${key}`);
  const names = column((given[0] as Given).key);
  const blank = `LEN(${given.map(({ key }) => column(key)).join('&')})=0`;
  const own = (look: string): readonly Step[] =>
    (rules?.(column, at) ?? [])
      .filter(([one]) => one === look)
      .map(([one, condition, key, words]) => step(condition, saidOf(one, column(key), words)));
  const isLast = `ROW(${names})=MAX(ROW(${names}))`;
  const steps: readonly Step[] = [
    (rest) =>
      `IF(IFERROR(${blank},FALSE),IF(${isLast},${quotedText(END)},""),IF(${isLast},${saidOf('refused', names, END)},${rest}))`,
    ...given.map((one) => asked(column(one.key), one)),
    ...own('refused'),
    ...given.flatMap((one) => odd(column(one.key), one)),
    ...own('unusual'),
  ];
  const rows = steps.reduceRight((rest, one) => one(rest), '"complete"');
  return `=IF(ROW(${names})=MIN(ROW(${names})),"of each row",SUBSTITUTE(${rows},"${ROW_NUMBER}",ROW(${names})))`;
}
