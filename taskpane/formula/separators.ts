import type { Token } from '@borgar/fx';

const isOperator = (token: Token | undefined, value: string): boolean =>
  token?.type === 'operator' && token.value === value;

/** Whether inputs are separated by semicolons: inside braces a semicolon begins a row in every country. */
function hasSemicolons(tokens: readonly Token[]): boolean {
  let braces = 0;
  for (const token of tokens) {
    if (isOperator(token, '{')) braces++;
    else if (isOperator(token, '}')) braces--;
    else if (braces === 0 && isOperator(token, ';')) return true;
  }
  return false;
}

/**
 * A formula as countries with a decimal comma write it, turned into the one spelling that workbooks keep:
 * `(0,65;B2)` becomes `(0.65,B2)`.
 */
export function separatedByCommas(tokens: readonly Token[]): Token[] {
  if (!hasSemicolons(tokens)) return [...tokens];
  const read: Token[] = [];
  let braces = 0;
  for (let place = 0; place < tokens.length; place++) {
    const token = tokens[place] as Token;
    const decimals = tokens[place + 2];
    if (isOperator(token, '{')) braces++;
    if (isOperator(token, '}')) braces--;
    if (token.type === 'number' && isOperator(tokens[place + 1], ',') && decimals?.type === 'number') {
      read.push({ ...token, value: `${token.value}.${decimals.value}` });
      place += 2;
    } else {
      read.push(braces === 0 && isOperator(token, ';') ? { ...token, value: ',' } : token);
    }
  }
  return read;
}
