import { stringifyTokens, type Token, tokenize, translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx/xlsx';
import { NAMESPACE } from '../../../functions/metadata.js';
import { idOf } from '../../formula/ids.js';
import { a1 } from '../../host/a1.js';
import { LIMITS } from './limits.js';
import type { LeftOut } from './reading.js';
import type { Place } from './readPlaces.js';
import { isRunnable } from './runnable.js';

/** Marks that files put before functions and names younger than the file format. */
const YOUNGER = /^(?:_xlfn\.|_xlws\.|_xlpm\.|_xludf\.)+/i;

/** References that begin with a book's number or name in brackets; a table's column has the table before it. */
const isOutside = ({ type, value }: Token): boolean => type.startsWith('range') && value.includes('[');

function named(token: Token): Token {
  if (token.type !== 'func' && token.type !== 'range_named') return token;
  const own = token.type === 'func' ? idOf(token.value) : undefined;
  return { ...token, value: own ? `${NAMESPACE}.${own}` : token.value.replace(YOUNGER, '') };
}

export type ReadFormula = { readonly formula: string } | { readonly problem: LeftOut };

/** A formula as the grid writes it, or what keeps it from running there. */
export function formulaOf(text: string): ReadFormula {
  if (text.length > LIMITS.formula) return { problem: 'heavyFormulas' };
  try {
    const tokens = tokenize(text.replace(/^=/, ''));
    if (tokens.some(isOutside)) return { problem: 'external' };
    const own = tokens.map(named);
    return isRunnable(own) ? { formula: `=${stringifyTokens(own)}` } : { problem: 'heavyFormulas' };
  } catch {
    return { problem: 'brokenFormulas' };
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
