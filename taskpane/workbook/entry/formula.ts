import type { Writing } from './writing.js';

export type FormulaEntry =
  | { readonly kind: 'formula'; readonly formula: string }
  | { readonly kind: 'refused'; readonly message: string };

const TOKEN = /"(?:[^"]|"")*"?|'(?:[^']|'')*'?|[\p{L}_$\\][\p{L}\p{N}_.$\\]*|\d+(?:[.,]\d+)*(?:e[+-]?\d+)?|[\s\S]/giu;
/** 1.200 or 1.200.000: a number with groups of three digits to one reader, with decimals to another. */
const GROUPED = /^[1-9]\d{0,2}(?:\.\d{3})+$/;
const DECIMAL_POINT = /^\d+\.\d+(?:e[+-]?\d+)?$/i;
const DECIMAL_COMMA = /^\d+(?:,\d+)?(?:e[+-]?\d+)?$/i;

interface Token {
  readonly text: string;
  readonly inside: 'call' | 'array' | 'none';
}

function tokens(formula: string): Token[] {
  const open: Token['inside'][] = [];
  const found: Token[] = [];
  for (const text of formula.match(TOKEN) ?? []) {
    if (text === ')' || text === '}') open.pop();
    found.push({ text, inside: open.at(-1) ?? 'none' });
    if (text === '{') open.push('array');
    if (text === '(') open.push(/[\p{L}\p{N}_]$/u.test(found.at(-2)?.text ?? '') ? 'call' : 'none');
  }
  return found;
}

const isNumber = ({ text }: Token) => /^\d/.test(text);
const refusal = (message: string): FormulaEntry => ({ kind: 'refused', message });

/** Separators are “;”: the notation of a language with a decimal comma. */
function withSemicolons(all: readonly Token[], { notation: { decimal }, words }: Writing): FormulaEntry {
  let formula = '';
  for (const token of all) {
    const { text, inside } = token;
    if (
      text === ',' ||
      (inside === 'array' && text.includes(',')) ||
      (decimal === '.' && isNumber(token) && text.includes(','))
    ) {
      return refusal(words.bothSeparators);
    }
    if (isNumber(token) && decimal === ',' && !DECIMAL_COMMA.test(text)) {
      return refusal(words.noNumber(text, decimal));
    }
    if (text === ';' && inside !== 'array') formula += ',';
    else formula += isNumber(token) ? text.replace(',', '.') : text;
  }
  return { kind: 'formula', formula };
}

/** No “;” in it: either the grid's own notation, or decimal commas outside any list of inputs. */
function withCommas(all: readonly Token[], known: ReadonlySet<string>, { words }: Writing): FormulaEntry {
  const numbers = all.filter(isNumber).flatMap(({ text }) => text.split(','));
  const points = numbers.some((text) => DECIMAL_POINT.test(text) && !GROUPED.test(text));
  let formula = '';
  for (const token of all) {
    const { text, inside } = token;
    const separated = isNumber(token) && !known.has(text) && /[.,]/.test(text);
    if (!separated) formula += text;
    else if (text.split(',').some((part) => GROUPED.test(part) && !known.has(part)))
      return refusal(words.unclear(text));
    else if (!text.includes(',') || points) formula += text;
    else if (inside === 'none' && DECIMAL_COMMA.test(text)) formula += text.replace(',', '.');
    else return refusal(words.unclear(text));
  }
  return { kind: 'formula', formula };
}

/**
 * A typed formula in the grid's own notation (decimal point, comma between inputs). `before` is the cell's
 * formula so far, shown in that notation while it is edited: numbers taken over from it keep their meaning.
 */
export function readFormula(typed: string, writing: Writing, before = ''): FormulaEntry {
  const all = tokens(typed);
  if (all.some(({ text, inside }) => text === ';' && inside !== 'array')) return withSemicolons(all, writing);
  if (writing.notation.decimal === '.') return { kind: 'formula', formula: typed };
  const known = tokens(before).filter(isNumber);
  return withCommas(all, new Set(known.map(({ text }) => text)), writing);
}
