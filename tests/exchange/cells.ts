import { xml } from './make.js';

/** One cell of a made sheet: where it stands, its attributes and what is in it. */
export interface MadeCell {
  readonly at: string;
  readonly xml: string;
}

const cell = (at: string, kind: string | undefined, inside: string, look = 0): MadeCell => ({
  at,
  xml: `<c r="${at}"${look ? ` s="${look}"` : ''}${kind ? ` t="${kind}"` : ''}>${inside}</c>`,
});

/** A number, as its digits stand in the file. */
export const number = (at: string, digits: number | string, look?: number) =>
  cell(at, undefined, `<v>${digits}</v>`, look);

export const inline = (at: string, text: string, look?: number) =>
  cell(at, 'inlineStr', `<is><t xml:space="preserve">${xml(text)}</t></is>`, look);

export const shared = (at: string, index: number, look?: number) => cell(at, 's', `<v>${index}</v>`, look);
export const truth = (at: string, value: boolean) => cell(at, 'b', `<v>${value ? 1 : 0}</v>`);
export const fault = (at: string, word: string) => cell(at, 'e', `<v>${word}</v>`);
export const day = (at: string, text: string, look?: number) => cell(at, 'd', `<v>${text}</v>`, look);
export const empty = (at: string, look: number) => cell(at, undefined, '', look);

/** The last answer of a formula; a text of the form `#…` is an error. */
export type Answer = number | string | boolean;

interface Kind {
  /** Attributes of the formula's element, such as those of an array. */
  readonly as?: string;
  readonly look?: number;
  /** Whether the cell says that its answer may spill. */
  readonly spills?: boolean;
}

/** A formula as files store it, with its last answer. */
export function formula(at: string, text: string, answer: Answer, { as = '', look, spills }: Kind = {}): MadeCell {
  const kind =
    typeof answer === 'boolean' ? 'b' : typeof answer === 'string' ? (answer.startsWith('#') ? 'e' : 'str') : undefined;
  const value = typeof answer === 'boolean' ? Number(answer) : xml(String(answer));
  const made = cell(at, kind, `<f${as ? ` ${as}` : ''}>${xml(text)}</f><v>${value}</v>`, look);
  return spills ? { at, xml: made.xml.replace('<c ', '<c cm="1" ') } : made;
}

/** Cells as rows, in the order given; what a row says of itself comes by its number. */
export function sheetData(cells: readonly MadeCell[], said: Readonly<Record<number, string>> = {}): string {
  const rows = new Map<number, string[]>();
  for (const row of Object.keys(said)) rows.set(Number(row), []);
  for (const { at, xml: text } of cells) {
    const row = Number(/\d+$/.exec(at)?.[0]);
    rows.set(row, [...(rows.get(row) ?? []), text]);
  }
  const lines = [...rows].sort(([one], [other]) => one - other);
  return `<sheetData>${lines
    .map(([row, texts]) => `<row r="${row}"${said[row] ? ` ${said[row]}` : ''}>${texts.join('')}</row>`)
    .join('')}</sheetData>`;
}
