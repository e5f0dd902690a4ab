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

/** Why a row has some of a group of figures and not all. */
const askedTogether =
  (column: (key: string) => string, group: readonly Given[]): Step =>
  (rest) => {
    const places = group.map(({ key }) => column(key));
    const isNumber = places.map((range) => `ISNUMBER(${range})`);
    const refused = group.map(({ label }, index) =>
      saidOf('refused', places[index] as string, `${label} is missing or no number: a row has all of its figures.`),
    );
    const first = refused.reduceRight((others, one, index) => `IF(${isNumber[index]},${others},${one})`);
    const isPart = `(${isNumber.join('+')}<${group.length})*(IFERROR(LEN(${places.join('&')}),1)>0)`;
    return `IF(${isPart},${first},${rest})`;
  };

/** What each cell of a row is asked, in turn. */
function stepsOf({ given, rules, told, isLong }: Block, column: (key: string) => string, at: At): readonly Step[] {
  const own = (look: string): readonly Step[] =>
    (rules?.(column, at) ?? [])
      .filter(([one]) => one === look)
      .map(([one, condition, key, words]) => step(condition, saidOf(one, column(key), words)));
  if (isLong) {
    const groups = told.map((keys) => given.filter(({ key }) => keys.includes(key)));
    return [...groups.map((group) => askedTogether(column, group)), ...own('refused'), ...own('unusual')];
  }
  return [
    ...given.map((one) => asked(column(one.key), one)),
    ...own('refused'),
    ...given.flatMap((one) => odd(column(one.key), one)),
    ...own('unusual'),
  ];
}

/** What each row of a list is: `complete`, empty, or the first of its cells that is refused or unusual, with why. */
export function stateOf(block: Block, at: At): string {
  const { given, name } = block;
  const column = (key: string) => at(`${name}.${key}`);
  const names = column((given[0] as Given).key);
  const blank = `LEN(${given.map(({ key }) => column(key)).join('&')})=0`;
  const isLast = `ROW(${names})=MAX(ROW(${names}))`;
  const steps: readonly Step[] = [
    (rest) =>
      `IF(IFERROR(${blank},FALSE),IF(${isLast},${quotedText(END)},""),IF(${isLast},${saidOf('refused', names, END)},${rest}))`,
    ...stepsOf(block, column, at),
  ];
  const rows = steps.reduceRight((rest, one) => one(rest), '"complete"');
  return `=IF(ROW(${names})=MIN(ROW(${names})),"of each row",SUBSTITUTE(${rows},"${ROW_NUMBER}",ROW(${names})))`;
}

/** The same of a whole column of a long list: what its limits refuse, and then what is odd. */
export function ofWholeColumn(look: 'refused' | 'unusual', range: string, { label, declared }: Given): Step {
  const span = declared && !isChoice(declared) ? (look === 'refused' ? declared.limit : declared.usual) : undefined;
  if (!declared || isChoice(declared) || !span) return (rest) => rest;
  const [least, most] = span;
  const outside = `IF(MIN(${range})<${least},MIN(${range}),MAX(${range}))`;
  const place = `ADDRESS(MIN(ROW(${range}))-1+MATCH(${outside},${range},0),COLUMN(${topOf(range)}),4)`;
  const words = look === 'refused' ? 'must be' : 'is usually';
  const said = `"${look}: "&${place}&${quotedText(` ${label} ${words} ${spanInWords(span, declared.unit)}.`)}`;
  return (rest) => `IF(IFERROR((MIN(${range})<${least})+(MAX(${range})>${most})>0,FALSE),${said},${rest})`;
}
