import { a1 } from '../../host/a1.js';
import { shapeOfAnswer } from './arrayShape.js';
import type { BookCell } from './book.js';
import { canBeWrittenBack } from './calculable.js';
import { isReference } from './formulaNodes.js';
import { LIMITS } from './limits.js';
import { fromOlder, SINGLE } from './olderFormula.js';
import { formulaOf, type ReadFormula, type SharedFormula, sharedFormula } from './readFormula.js';
import type { Reading } from './reading.js';
import { type Place, rectangleOf } from './readPlaces.js';
import { attribute, childOf, type XmlElement } from './readXml.js';

type OfFormula = Pick<BookCell, 'formula' | 'spill' | 'fixed' | 'kept'>;

interface Found extends OfFormula {
  /** Whether the cell's value is part of the answer of a formula elsewhere. */
  readonly filled?: boolean;
}

/** The formulas of one sheet, cell after cell. */
export class Formulas {
  readonly #shared = new Map<string, SharedFormula>();
  /** The last row of each column that an answer above or to the left of it fills. */
  readonly #filledTo: number[] = [];

  constructor(private readonly reading: Reading) {}

  read(cell: XmlElement, place: Place): Found {
    const element = childOf(cell, 'f');
    if (!element) return { filled: (this.#filledTo[place.column] ?? -1) >= place.row };
    const text = this.#text(element, place);
    const kind = attribute(element, 't');
    const spills = attribute(cell, 'cm') !== undefined;
    const read = this.#read(text, kind !== 'array' && !spills);
    if ('problem' in read) {
      this.reading.leftOut.add(kind === 'dataTable' ? 'dataTables' : read.problem);
      // Of an answer of several cells, each keeps its value.
      const fits = text !== undefined && text.length <= LIMITS.formula;
      return fits && kind !== 'array' && canBeWrittenBack(read.problem) ? { kept: text } : {};
    }
    if (kind !== 'array') return read;
    return spills ? { ...read, ...this.#spill(element, place) } : this.#fixed(read.formula, element, place);
  }

  #read(text: string | undefined, older: boolean): ReadFormula {
    if (text === undefined) return { problem: 'brokenFormulas' };
    const read = formulaOf(text, this.reading);
    if (!older || 'problem' in read) return read;
    const formula = fromOlder(read.formula.slice(1), this.reading.ranges);
    return formula === undefined ? { problem: 'intersections' } : { formula: `=${formula}` };
  }

  /** An array formula of the older kind, which fills the cells that it was given, whatever its answer has. */
  #fixed(formula: string, element: XmlElement, place: Place): OfFormula {
    const filled = rectangleOf(attribute(element, 'ref') ?? '');
    if (!filled || filled.top !== place.row || filled.left !== place.column) return { formula };
    const fixed = { rows: filled.bottom - filled.top + 1, columns: filled.right - filled.left + 1 };
    const text = formula.slice(1);
    const shape = shapeOfAnswer(text, this.reading.ranges);
    if (shape && shape.rows === fixed.rows && shape.columns === fixed.columns)
      return { formula, fixed, ...this.#spill(element, place) };
    // A range in one cell shows its first, and not the one beside it.
    if (fixed.rows * fixed.columns === 1 && !isReference(text)) return { formula: `=${SINGLE}(${text})`, fixed };
    this.reading.leftOut.add(shape ? 'unevenArrays' : 'fixedArrays');
    return shape ? {} : { formula, ...this.#spill(element, place) };
  }

  #text(element: XmlElement, place: Place): string | undefined {
    const own = element.textContent?.trim() || undefined;
    const kind = attribute(element, 't') ?? 'normal';
    if (kind === 'dataTable') return undefined;
    if (kind !== 'shared') return own;
    const number = attribute(element, 'si') ?? '';
    if (own !== undefined && own.length <= LIMITS.formula) this.#shared.set(number, sharedFormula(own, place));
    return own ?? this.#shared.get(number)?.at(place);
  }

  #spill(element: XmlElement, { row, column }: Place): Pick<BookCell, 'spill'> {
    const filled = rectangleOf(attribute(element, 'ref') ?? '');
    if (!filled || filled.top !== row || filled.left !== column) return {};
    const [bottom, right] = [Math.min(filled.bottom, LIMITS.rows - 1), Math.min(filled.right, LIMITS.columns - 1)];
    if (bottom === row && right === column) return {};
    for (let one = column; one <= right; one += 1) this.#filledTo[one] = Math.max(bottom, this.#filledTo[one] ?? -1);
    return { spill: `${a1(row, column)}:${a1(bottom, right)}` };
  }
}
