import type { Token } from '@borgar/fx/xlsx';

const DECLARES = new Set(['LET', 'LAMBDA']);

const isBlank = ({ type }: Token): boolean => type === 'whitespace' || type === 'newline';
const opens = ({ value }: Token): boolean => value === '(' || value === '{';
const closes = ({ value }: Token): boolean => value === ')' || value === '}';

/** The arguments of a call whose bracket opens at `start`, and where it ends. */
function argumentsOf(tokens: readonly Token[], start: number): { given: Token[][]; end: number } {
  const given: Token[][] = [[]];
  let depth = 0;
  for (let place = start; place < tokens.length; place += 1) {
    const token = tokens[place] as Token;
    if (token.type === 'operator' && closes(token)) depth -= 1;
    if (depth === 0 && place > start) return { given, end: place };
    if (depth === 1 && token.type === 'operator' && token.value === ',') given.push([]);
    else if (depth > 0 && !isBlank(token)) given.at(-1)?.push(token);
    if (token.type === 'operator' && opens(token)) depth += 1;
  }
  return { given, end: tokens.length };
}

/** The names that a call declares: each second argument of LET, all but the last of LAMBDA. */
function declared(call: string, given: readonly Token[][]): ReadonlySet<string> {
  const places = given.slice(0, -1).filter((_, place) => call === 'LAMBDA' || place % 2 === 0);
  return new Set(places.flatMap(([one, more]) => (one && !more ? [one.value.toLowerCase()] : [])));
}

/** Which tokens are parameters: names that LET or LAMBDA declares, wherever they stand within that call. */
export function parametersIn(tokens: readonly Token[]): ReadonlySet<Token> {
  const found = new Set<Token>();
  for (const [place, { type, value }] of tokens.entries()) {
    const call = value.toUpperCase();
    if (type !== 'func' || !DECLARES.has(call)) continue;
    const { given, end } = argumentsOf(tokens, place + 1);
    const names = declared(call, given);
    for (const one of tokens.slice(place + 1, end)) {
      if ((one.type === 'range_named' || one.type === 'func') && names.has(one.value.toLowerCase())) found.add(one);
    }
  }
  return found;
}
