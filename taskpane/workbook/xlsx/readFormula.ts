import { stringifyTokens, type Token, tokenize, translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx/xlsx';
import { NAMESPACE } from '../../../functions/metadata.js';
import { idOf } from '../../formula/ids.js';
import { a1 } from '../../host/a1.js';
import { type Around, hindrance } from './calculable.js';
import { LIMITS } from './limits.js';
import type { LeftOut } from './reading.js';
import type { Place } from './readPlaces.js';
import { isRunnable } from './runnable.js';

/** Marks that files put before functions and names younger than the file format. */
const YOUNGER = /^(?:_xlfn\.|_xlws\.|_xlpm\.|_xludf\.)+/i;

function named(token: Token, names: ReadonlyMap<string, string>): Token {
  if (token.type !== 'func' && token.type !== 'range_named') return token;
  const own = token.type === 'func' ? idOf(token.value) : undefined;
  const value = own ? `${NAMESPACE}.${own}` : token.value.replace(YOUNGER, '');
  // The engine finds a name only in its own letters, large and small.
  return { ...token, value: (token.type === 'range_named' && names.get(value.toLowerCase())) || value };
}

export type ReadFormula = { readonly formula: string } | { readonly problem: LeftOut };

/** A formula as the grid writes it, or what keeps it from running there. */
export function formulaOf(text: string, around: Around): ReadFormula {
  if (text.length > LIMITS.formula) return { problem: 'heavyFormulas' };
  try {
    const tokens = tokenize(text.replace(/^=/, ''));
    const own = tokens.map((token) => named(token, around.names));
    const problem = hindrance(own, around);
    if (problem) return { problem };
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
