import { stringifyTokens, type Token, tokenize, translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx/xlsx';
import { NAMESPACE } from '../../../functions/metadata.js';
import { idOf } from '../../formula/ids.js';
import { a1 } from '../../host/a1.js';
import type { Place } from './readPlaces.js';

/** Marks that files put before functions and names younger than the file format. */
const YOUNGER = /^(?:_xlfn\.|_xlws\.|_xlpm\.|_xludf\.)+/i;

/** References that begin with a book's number or name in brackets; a table's column has the table before it. */
const isOutside = ({ type, value }: Token): boolean => type.startsWith('range') && value.includes('[');

function named(token: Token): Token {
  if (token.type !== 'func' && token.type !== 'range_named') return token;
  const own = token.type === 'func' ? idOf(token.value) : undefined;
  return { ...token, value: own ? `${NAMESPACE}.${own}` : token.value.replace(YOUNGER, '') };
}

/** A formula as the grid writes it; `outside` where it reads another workbook. */
export function formulaOf(text: string): string | 'outside' | undefined {
  try {
    const tokens = tokenize(text.replace(/^=/, ''));
    return tokens.some(isOutside) ? 'outside' : `=${stringifyTokens(tokens.map(named))}`;
  } catch {
    return undefined;
  }
}

/** A formula that several cells share, as each of them reads it from where it stands. */
export interface SharedFormula {
  at(place: Place): string | undefined;
}

export function sharedFormula(text: string, { row, column }: Place): SharedFormula {
  let relative: string | undefined;
  return {
    at(place) {
      try {
        relative ??= translateFormulaToR1C1(text, a1(row, column));
        return translateFormulaToA1(relative, a1(place.row, place.column));
      } catch {
        return undefined;
      }
    },
  };
}
