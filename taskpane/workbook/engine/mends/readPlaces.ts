import { type AstExpression, parse, tokenize } from '@borgar/fx/xlsx';

/** Functions that ask where a cell is, or what kind, and read no answer from it. */
const ASK_PLACE = new Set('ROW ROWS COLUMN COLUMNS AREAS SHEET SHEETS ISREF ISFORMULA FORMULATEXT'.split(' '));
/** Functions that find a place beginning with another one. */
const FIND_PLACE = new Set(['OFFSET', 'INDEX']);
/** What CELL tells of the answer in a cell; all else is of its place or its look. */
const OF_ANSWER = new Set(['contents', 'type']);

/** What may ask for a place only, in a formula's letters. */
export const ASKS_PLACE = new RegExp(
  `(?<![\\p{L}\\p{N}_.])(?:${[...ASK_PLACE, 'CELL', 'OFFSET', 'SINGLE'].join('|')})\\s*\\(`,
  'iu',
);

/** A range whose answers a formula reads; `single` where it reads the one beside it. */
interface ReadRange {
  readonly range: string;
  readonly single: boolean;
}

class Reader {
  readonly ranges: ReadRange[] = [];
  /** Whether a name is read, which can stand for anything. */
  named = false;

  read(node: AstExpression | null | undefined, single = false): void {
    if (!node) return;
    switch (node.type) {
      case 'ReferenceIdentifier':
        if (node.kind === 'name') this.named = true;
        else this.ranges.push({ range: node.value, single });
        return;
      case 'CallExpression':
        this.#call(node);
        return;
      case 'ArrayExpression':
        return;
      case 'LetExpression':
        for (const { init } of node.declarations) this.read(init);
        this.read(node.body);
        return;
      case 'LambdaExpression':
        this.read(node.body);
        return;
      default:
        if ('arguments' in node) for (const one of node.arguments as readonly AstExpression[]) this.read(one);
    }
  }

  #call({ callee, arguments: given }: Extract<AstExpression, { readonly type: 'CallExpression' }>): void {
    const name = 'name' in callee ? callee.name.toUpperCase() : '';
    const [first, ...rest] = given as readonly (AstExpression | null | undefined)[];
    const asks = name === 'CELL' && first?.type === 'Literal' && !OF_ANSWER.has(String(first.value).toLowerCase());
    if (ASK_PLACE.has(name)) this.#place(first);
    else if (asks) this.#place(rest[0]);
    else if (name === 'SINGLE') this.read(first, first?.type === 'ReferenceIdentifier');
    else {
      // What OFFSET leads to is followed by the engine itself, once it is known.
      if (name === 'OFFSET') this.#place(first);
      else this.read(first);
      for (const one of rest) this.read(one);
    }
  }

  /** A part of which only the place is asked for: what it is calculated from is read all the same. */
  #place(node: AstExpression | null | undefined): void {
    if (!node || node.type === 'ReferenceIdentifier') return;
    if (node.type === 'BinaryExpression' && /^[:, ]+$/.test(node.operator)) {
      for (const one of node.arguments as readonly AstExpression[]) this.#place(one);
    } else if (
      node.type === 'CallExpression' &&
      'name' in node.callee &&
      FIND_PLACE.has(node.callee.name.toUpperCase())
    ) {
      const [first, ...rest] = node.arguments as readonly AstExpression[];
      this.#place(first);
      for (const one of rest) this.read(one);
    } else this.read(node);
  }
}

/** The ranges whose answers a formula reads; nothing where that cannot be told. */
export function rangesRead(formula: string): readonly ReadRange[] | undefined {
  try {
    const reader = new Reader();
    reader.read(parse(tokenize(formula.replace(/^=/, ''))));
    return reader.named ? undefined : reader.ranges;
  } catch {
    return undefined;
  }
}
