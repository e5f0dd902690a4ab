import { stringifyTokens, type Token, tokenize } from '@borgar/fx/xlsx';
import { idOf } from '../../formula/ids.js';
import { parametersIn } from './parameters.js';
import { functionInFile, PARAMETER } from './youngerFunctions.js';

function inFile(token: Token, parameters: ReadonlySet<Token>): Token {
  if (parameters.has(token)) return { ...token, value: PARAMETER + token.value };
  if (token.type !== 'func') return token;
  const id = idOf(token.value);
  return { ...token, value: id ? `_xldudf_POWDER_${id}` : functionInFile(token.value) };
}

/** A formula as a file stores it: without its equals sign, an add-in's functions under the name that Excel gives them. */
export function formulaInFile(formula: string): string {
  const text = formula.replace(/^=/, '');
  try {
    const tokens = tokenize(text);
    const parameters = parametersIn(tokens);
    return stringifyTokens(tokens.map((token) => inFile(token, parameters)));
  } catch {
    return text;
  }
}
