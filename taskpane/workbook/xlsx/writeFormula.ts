import { stringifyTokens, type Token, tokenize } from '@borgar/fx/xlsx';
import { idOf } from '../../formula/ids.js';

/** Functions younger than the file format, which stand in a file with a mark before them. */
const YOUNGER = new Set(
  [
    'CONCAT',
    'IFS',
    'LET',
    'MAXIFS',
    'MINIFS',
    'RANDARRAY',
    'SEQUENCE',
    'SORTBY',
    'SWITCH',
    'TEXTJOIN',
    'UNIQUE',
  ].concat(
    ['XLOOKUP', 'XMATCH', 'VSTACK', 'HSTACK', 'TOCOL', 'TOROW', 'TAKE', 'DROP', 'CHOOSECOLS', 'CHOOSEROWS', 'EXPAND'],
    ['STDEV.S', 'STDEV.P', 'VAR.S', 'VAR.P', 'PERCENTILE.INC', 'PERCENTILE.EXC', 'QUARTILE.INC', 'QUARTILE.EXC'],
  ),
);
const YOUNGER_STILL = new Set(['FILTER', 'SORT']);

function inFile(token: Token): Token {
  if (token.type !== 'func') return token;
  const id = idOf(token.value);
  const name = token.value.toUpperCase();
  if (id) return { ...token, value: `_xldudf_POWDER_${id}` };
  if (YOUNGER_STILL.has(name)) return { ...token, value: `_xlfn._xlws.${name}` };
  return YOUNGER.has(name) ? { ...token, value: `_xlfn.${name}` } : token;
}

/** A formula as a file stores it: without its equals sign, an add-in's functions under the name that Excel gives them. */
export function formulaInFile(formula: string): string {
  const text = formula.replace(/^=/, '');
  try {
    return stringifyTokens(tokenize(text).map(inFile));
  } catch {
    return text;
  }
}

/** Whether a formula calculates with whole ranges, cell by cell, before it comes to its one answer. */
export function worksOnRanges(formula: string): boolean {
  const tokens = tokenize(formula.replace(/^=/, ''));
  const operates = tokens.some(({ type, value }) => type === 'operator' && !/^[:,;(){}\s]+$/.test(value));
  return operates && tokens.some(({ type, value }) => type.startsWith('range') && value.includes(':'));
}
