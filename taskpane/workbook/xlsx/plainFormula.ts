import type { Book } from './book.js';
import { type Call, type Node, nameOf, type Ranges, spanOf, treeOf } from './formulaNodes.js';
import { fromOlder, SINGLE } from './olderFormula.js';
import { rectangleOf } from './readPlaces.js';

/** Every call of the function that picks one value. */
function picks(node: unknown): Call[] {
  if (typeof node !== 'object' || node === null) return [];
  if (Array.isArray(node)) return node.flatMap(picks);
  const { type } = node as Node;
  const inside = Object.entries(node).flatMap(([key, one]) => (key === 'loc' ? [] : picks(one)));
  return type === 'CallExpression' && nameOf(node as Call).toUpperCase() === SINGLE
    ? [node as Call, ...inside]
    : inside;
}

const OPENS = new RegExp(`^${SINGLE}\\(`);

function withoutPicks(text: string, calls: readonly Call[]): string {
  const cut = calls.map(spanOf).flatMap(([start, end]) => [
    { at: start, length: OPENS.exec(text.slice(start))?.[0].length ?? 0 },
    { at: end - 1, length: 1 },
  ]);
  return cut
    .sort((one, other) => other.at - one.at)
    .reduce((left, { at, length }) => left.slice(0, at) + left.slice(at + length), text);
}

/**
 * A formula of the grid as a file has it among those of the older kind, which give one value. Nothing where such a formula
 * would be calculated otherwise: then the file has it as one whose answer may spill.
 * @param text without its equals sign.
 */
export function asOlder(text: string, ranges: Ranges): string | undefined {
  try {
    const plain = text.includes(`${SINGLE}(`) ? withoutPicks(text, picks(treeOf(text))) : text;
    return fromOlder(plain, ranges) === text ? plain : undefined;
  } catch {
    return undefined;
  }
}

/** What stands in the one call around a whole formula that picks one value; otherwise the formula itself. */
export function withoutPick(text: string): string {
  if (!text.startsWith(`${SINGLE}(`)) return text;
  const node = treeOf(text);
  const whole = node.type === 'CallExpression' && spanOf(node)[1] === text.length;
  return whole ? withoutPicks(text, [node]) : text;
}

/** The names of a workbook that stand for several cells. */
export const rangesIn = ({ sheets }: Book): Ranges =>
  new Map(
    sheets.flatMap(({ names }) =>
      Object.entries(names).flatMap(([name, range]): [string, string][] =>
        rectangleOf(range) ? [[name.toLowerCase(), range]] : [],
      ),
    ),
  );
