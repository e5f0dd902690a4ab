import { idOf } from '../../formula/ids.js';
import { areaOf, type Call, joinsReferences, type Node, nameOf, type Ranges, treeOf } from './formulaNodes.js';
import { GIVES_ARRAYS, GIVES_PLACES, kindAt } from './parameterKinds.js';

/** How many rows and columns an answer has. */
export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

const ONE: Shape = { rows: 1, columns: 1 };

/** More rows or columns than an answer that a file keeps has. */
const MOST = 100_000;

/** What is calculated element by element; one row or column goes with all of the other. */
function together(one: Shape | undefined, other: Shape | undefined): Shape | undefined {
  if (!one || !other) return undefined;
  const fits = (a: number, b: number) => a === b || a === 1 || b === 1;
  if (!fits(one.rows, other.rows) || !fits(one.columns, other.columns)) return undefined;
  return { rows: Math.max(one.rows, other.rows), columns: Math.max(one.columns, other.columns) };
}

const isYes = (node: Node | null | undefined): boolean | undefined =>
  !node ? false : node.type === 'Literal' ? Boolean(node.value) : undefined;

type Given = readonly (Node | null | undefined)[];
type ShapeAt = (place: number) => Shape | undefined;

/** Functions whose answer has a form of its own. */
const FORMS: Readonly<Record<string, (at: ShapeAt, given: Given) => Shape | undefined>> = {
  TRANSPOSE: (at) => swapped(at(0)),
  ROW: (at, given) => (given.length === 0 ? ONE : column(at(0)?.rows)),
  COLUMN: (at, given) => (given.length === 0 ? ONE : swapped(column(at(0)?.columns))),
  MINVERSE: (at) => at(0),
  MMULT: (at) => {
    const [left, right] = [at(0), at(1)];
    return left && right && { rows: left.rows, columns: right.columns };
  },
  FREQUENCY: (at) => {
    const bins = at(1);
    return column(bins && bins.rows * bins.columns + 1);
  },
  TREND: (at, given) => at(given[2] ? 2 : given[1] ? 1 : 0),
  GROWTH: (at, given) => at(given[2] ? 2 : given[1] ? 1 : 0),
  LINEST: fitted,
  LOGEST: fitted,
};

const swapped = (shape: Shape | undefined): Shape | undefined => shape && { rows: shape.columns, columns: shape.rows };
const column = (rows: number | undefined): Shape | undefined => (rows === undefined ? undefined : { rows, columns: 1 });

function fitted(at: ShapeAt, given: Given): Shape | undefined {
  const y = at(0);
  const x = given[1] ? at(1) : ONE;
  const whole = isYes(given[3]);
  if (!x || !y || whole === undefined) return undefined;
  const slopes = y.columns === 1 ? x.columns : y.rows === 1 ? x.rows : 1;
  return { rows: whole ? 5 : 1, columns: slopes + 1 };
}

function shapeOfCall(node: Call, ranges: Ranges): Shape | undefined {
  const written = nameOf(node);
  const name = written.toUpperCase();
  const given = node.arguments as Given;
  const at: ShapeAt = (place) => shapeOf(given[place], ranges);
  const form = FORMS[name];
  if (form) return form(at, given);
  if (name === '' || idOf(written) !== undefined || GIVES_ARRAYS.has(name) || GIVES_PLACES.has(name)) return undefined;
  // What IF and the like hand on is gone through with what they ask.
  const through = name === 'IF' || name === 'CHOOSE';
  return given.reduce<Shape | undefined>(
    (shape, _, place) => (through || kindAt(name, place, false) === 'v' ? together(shape, at(place)) : shape),
    ONE,
  );
}

function shapeOf(node: Node | null | undefined, ranges: Ranges): Shape | undefined {
  if (!node) return ONE;
  switch (node.type) {
    case 'ReferenceIdentifier': {
      const area = areaOf(node, ranges);
      if (!area) return node.kind === 'name' ? ONE : undefined;
      const shape = { rows: area.bottom - area.top + 1, columns: area.right - area.left + 1 };
      return shape.rows > MOST || shape.columns > MOST ? undefined : shape;
    }
    case 'ArrayExpression':
      return { rows: node.elements.length, columns: node.elements[0]?.length ?? 0 };
    case 'UnaryExpression':
    case 'BinaryExpression':
      if (joinsReferences(node.operator) || node.operator === '#') return undefined;
      return (node.arguments as readonly Node[]).reduce<Shape | undefined>(
        (shape, one) => together(shape, shapeOf(one, ranges)),
        ONE,
      );
    case 'CallExpression':
      return shapeOfCall(node, ranges);
    case 'Literal':
    case 'ErrorLiteral':
      return ONE;
    default:
      return undefined;
  }
}

/** The form of an array formula's answer, as far as it is to be seen. */
export function shapeOfAnswer(text: string, ranges: Ranges): Shape | undefined {
  try {
    return shapeOf(treeOf(text), ranges);
  } catch {
    return undefined;
  }
}
