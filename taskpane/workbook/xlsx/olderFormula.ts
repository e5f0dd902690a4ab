import { idOf } from '../../formula/ids.js';
import {
  areaOf,
  type Call,
  isOneCell,
  joinsReferences,
  type Node,
  nameOf,
  type Ranges,
  type Reference,
  spanOf,
  treeOf,
} from './formulaNodes.js';
import { GIVES_ARRAYS, GIVES_PLACES, HANDS_ON, type Kind, kindAt } from './parameterKinds.js';

/** The function that picks the one value. */
export const SINGLE = 'SINGLE';

/** Functions whose answer is a place in a list, so that it is never 0. */
const COUNTS_FROM_ONE = new Set(['MATCH', 'XMATCH', 'ROW', 'ROWS', 'COLUMN', 'COLUMNS']);

/** Where ranges are calculated with, and nobody can say what a formula that is no array formula makes of them. */
type Here = Kind | 'x';

class Uncertain extends Error {}

/** What makes it worth to look closer: ranges, names of ranges, arrays, functions that give several values. */
const SEVERAL = /[:{]/;
const CALLS = new RegExp(`(?<![\\p{L}\\p{N}_.])(?:${[...GIVES_ARRAYS, ...GIVES_PLACES].join('|')})\\(`, 'iu');

/** Finds each place where a formula of the older kind takes one value although several are offered. */
class Reader {
  readonly #wrapped: (readonly [start: number, end: number])[] = [];

  constructor(
    private readonly text: string,
    private readonly ranges: Ranges,
  ) {}

  read(): string {
    if (this.#several(treeOf(this.text), 'v')) this.#wrapped.push([0, this.text.length]);
    const marks = this.#wrapped.flatMap(([start, end]) => [
      { at: start, order: 1, mark: `${SINGLE}(` },
      { at: end, order: 0, mark: ')' },
    ]);
    let done = '';
    let from = 0;
    for (const { at, mark } of marks.sort((one, other) => one.at - other.at || one.order - other.order)) {
      done += this.text.slice(from, at) + mark;
      from = at;
    }
    return done + this.text.slice(from);
  }

  /** Whether a part may still give several values in its place. */
  #several(node: Node | null | undefined, here: Here): boolean {
    if (!node) return false;
    switch (node.type) {
      case 'ReferenceIdentifier':
        return this.#isSeveral(node) && this.#take(node, here);
      case 'ArrayExpression':
        return true;
      case 'UnaryExpression':
      case 'BinaryExpression':
        return this.#operation(node, here);
      case 'CallExpression':
        return this.#call(node, here);
      case 'LetExpression':
        for (const { init } of node.declarations) this.#several(init, 'r');
        return this.#several(node.body, here);
      default:
        return false;
    }
  }

  /** Takes one value of several where the place asks for one. */
  #take(node: Node, here: Here): boolean {
    if (here === 'x') throw new Uncertain();
    if (here !== 'v') return true;
    const [start, end] = spanOf(node);
    const part = this.text.slice(start, end);
    if (part.split('(').length !== part.split(')').length) throw new Uncertain();
    this.#wrapped.push([start, end]);
    return false;
  }

  #isSeveral(reference: Reference): boolean {
    const area = areaOf(reference, this.ranges);
    return area !== undefined && !isOneCell(area);
  }

  #operation(node: Extract<Node, { readonly operator: string }>, here: Here): boolean {
    const { operator } = node;
    if (operator === '#' || operator === ',') throw new Uncertain();
    if (joinsReferences(operator)) return this.#take(node, here);
    const inside = here === 'a' ? 'a' : here === 'u' || here === 'x' ? 'x' : 'v';
    return (node.arguments as readonly Node[]).map((one) => this.#several(one, inside)).includes(true);
  }

  #call(node: Call, here: Here): boolean {
    const written = nameOf(node);
    const name = written.toUpperCase();
    const ours = idOf(written) !== undefined;
    let several = false;
    for (const [place, one] of node.arguments.entries()) {
      const kind = kindAt(name, place, ours);
      const given = this.#several(one as Node | null, this.#inside(name, place, kind, here));
      // A list of constants in the place of one value is gone through; what is handed on stays what it is.
      if (given && (kind === 'v' || (HANDS_ON.has(name) && place > 0))) several = true;
    }
    if (!this.#givesSeveral(node, name)) return several;
    return this.#take(node, (name === 'ROW' || name === 'COLUMN') && here === 'r' ? 'v' : here);
  }

  #inside(name: string, place: number, kind: Kind, here: Here): Here {
    const hands = HANDS_ON.has(name);
    if (hands && place > 0 && here === 'v') return 'v';
    if (here === 'a') return hands && place === 0 ? 'x' : 'a';
    return kind === 'v' && (here === 'x' || here === 'u') ? 'x' : kind;
  }

  #givesSeveral(node: Call, name: string): boolean {
    const given = node.arguments as readonly (Node | null | undefined)[];
    const areaAt = (place: number) => {
      const one = given[place];
      return one?.type === 'ReferenceIdentifier' ? areaOf(one, this.ranges) : undefined;
    };
    const isLine = (place: number) => {
      const area = areaAt(place);
      return area !== undefined && (area.top === area.bottom || area.left === area.right);
    };
    if (name === 'ROW' || name === 'COLUMN') {
      const area = areaAt(0);
      return area !== undefined && !isOneCell(area);
    }
    if (name === 'XLOOKUP') return !isLine(2);
    if (name === 'INDEX') {
      const [, ...places] = given;
      return !(places.every(isPlace) && (places.length === 2 || (places.length === 1 && isLine(0))));
    }
    if (name === 'OFFSET') {
      const area = areaAt(0);
      return !(area && isOneCell(area) && given.slice(3).every((one) => one?.type === 'Literal' && one.value === 1));
    }
    return GIVES_ARRAYS.has(name) || GIVES_PLACES.has(name);
  }
}

/** Whether an index is sure to name one row or column: 0 names all of them. */
function isPlace(node: Node | null | undefined): boolean {
  if (node?.type === 'Literal') return typeof node.value === 'number' && node.value >= 1;
  return node?.type === 'CallExpression' && COUNTS_FROM_ONE.has(nameOf(node).toUpperCase());
}

const mentions = (text: string, ranges: Ranges): boolean => {
  if (ranges.size === 0) return false;
  const words = text.toLowerCase().match(/[\p{L}_\\][\p{L}\p{N}_.\\?]*/gu) ?? [];
  return words.some((word) => ranges.has(word));
};

/**
 * A formula that a file has as one of the older kind, which gives one value and takes one of a range by where it stands, as
 * the grid calculates it: each such place says so. Nothing where that cannot be told.
 * @param text without its equals sign.
 */
export function fromOlder(text: string, ranges: Ranges): string | undefined {
  if (!SEVERAL.test(text) && !CALLS.test(text) && !mentions(text, ranges)) return text;
  try {
    return new Reader(text, ranges).read();
  } catch {
    return undefined;
  }
}
