import { anyOf, spanInWords } from '../core/wording.js';
import { type Declared, isChoice } from './declared.js';

/** A cell, or a whole column of them, that is judged by formulas of the worksheet’s own. */
export interface Asked {
  readonly declared: Declared;
  /** As the sheet calls it. */
  readonly label: string;
  /** A blank is an answer: what nobody has to state. */
  readonly mayBeBlank?: boolean;
}

/** What marks a figure that nobody has touched yet, at the end of its judgement. */
export const EXAMPLES = 'example’s';

export const quotedText = (words: string): string => `"${words.replaceAll('"', '""')}"`;

/** The address of a cell, or of each cell of a column, as it stands when the sheet is calculated. */
export const addressOf = (cell: string): string => `ADDRESS(ROW(${cell}),COLUMN(${cell}),4)`;

/** A judgement begins with one word, and then names its cell. */
export const said = (look: 'refused' | 'unusual', cell: string, words: string): string =>
  `"${look}: "&${addressOf(cell)}&${quotedText(` ${words}`)}`;

/** One step of a judgement: where the condition is true it ends there, else the rest is asked. */
export type Step = (rest: string) => string;

const when =
  (condition: string, answer: string): Step =>
  (rest) =>
    `IF(${condition},${answer},${rest})`;

export const steps = (all: readonly Step[], last: string): string => all.reduceRight((rest, step) => step(rest), last);

export const isError = (cell: string, { label }: Pick<Asked, 'label'>): Step =>
  when(`ISERROR(${cell})`, said('refused', cell, `${label} is an error.`));

export const isBlank = (cell: string): string => `LEN(${cell})=0`;

/** Why a cell that is no error is refused. Limits and words are those of the declaration. */
export function refusals(cell: string, { declared, label, mayBeBlank }: Asked): readonly Step[] {
  const missing = mayBeBlank ? [] : [when(isBlank(cell), said('refused', cell, `${label} is missing.`))];
  // What may be blank is judged where it is not.
  const unless = mayBeBlank ? `(LEN(${cell})>0)*` : '';
  if (isChoice(declared)) {
    const of = declared.of.map(quotedText).join(',');
    const unknown = `${unless}ISERROR(MATCH(TRIM(${cell}),{${of}},0))`;
    return [...missing, when(unknown, said('refused', cell, `${label} must be ${anyOf(declared.of)}.`))];
  }
  const { limit, unit } = declared;
  return [
    ...missing,
    when(
      mayBeBlank ? `${unless}NOT(ISNUMBER(${cell}))` : `NOT(ISNUMBER(${cell}))`,
      said('refused', cell, `${label} is not a number.`),
    ),
    when(
      `${unless}((${cell}<${limit[0]})+(${cell}>${limit[1]}))>0`,
      said('refused', cell, `${label} must be ${spanInWords(limit, unit)}.`),
    ),
  ];
}

function oddities(cell: string, { declared, label, mayBeBlank }: Asked): readonly Step[] {
  if (isChoice(declared) || !declared.usual) return [];
  const [least, most] = declared.usual;
  const unless = mayBeBlank ? `(LEN(${cell})>0)*` : '';
  const words = `${label} is usually ${spanInWords(declared.usual, declared.unit)}.`;
  return [when(`${unless}((${cell}<${least})+(${cell}>${most}))>0`, said('unusual', cell, words))];
}

/** Whether a figure is still the example’s: it equals it, and nobody has said where else it comes from. */
export interface Example {
  readonly figure: number | string;
  /** Where the user says whose figure it is. */
  readonly source: string;
}

const written = (figure: number | string): string => (typeof figure === 'number' ? String(figure) : quotedText(figure));

/** `usual`, `unusual: B7 …` or `refused: B7 …` for one cell; a figure of the example says so at its end. */
export function verdictOf(cell: string, asked: Asked, example?: Example, further: readonly Step[] = []): string {
  const base = steps([isError(cell, asked), ...refusals(cell, asked), ...further, ...oddities(cell, asked)], '"usual"');
  if (!example) return `=${base}`;
  const untouched = `IF(LEN(${cell})*(LEN(${example.source})=0),IF(${cell}=${written(example.figure)},", ${EXAMPLES}",""),"")`;
  return `=${base}&IFERROR(${untouched},"")`;
}
