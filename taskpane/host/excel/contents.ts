/** A text that Excel would read as a number, a date, a truth value or a formula. Everything else needs no mark. */
const LOOKS_LIKE_SOMETHING_ELSE = /^[^\p{L}]|\d|^(?:true|false)$/iu;

/** A text as Excel takes it, kept a text by a leading apostrophe where Excel would make something else of it. */
export const asText = (text: string): string =>
  text !== '' && LOOKS_LIKE_SOMETHING_ELSE.test(text) ? `'${text}` : text;

interface Content {
  readonly text?: string;
  readonly number?: number;
}

/** What goes into one cell. Blank is an empty text. */
export const contentOf = ({ text, number }: Content, formula?: string): string | number =>
  formula ?? number ?? asText(text ?? '');

/** Rows filled up to one length, since Excel takes rectangles only. */
export function rectangle<C>(rows: readonly (readonly C[])[], empty: C): C[][] {
  const width = Math.max(1, ...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: width }, (_, column) => row[column] ?? empty));
}
