import { a1 } from '../../host/a1.js';
import type { BookCell } from './book.js';
import { canBeWrittenBack, intersects } from './calculable.js';
import { LIMITS } from './limits.js';
import { formulaOf, type ReadFormula, type SharedFormula, sharedFormula } from './readFormula.js';
import type { Reading } from './reading.js';
import { type Place, rectangleOf } from './readPlaces.js';
import { attribute, childOf, type XmlElement } from './readXml.js';

interface Found extends Pick<BookCell, 'formula' | 'spill' | 'kept'> {
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
    const read = this.#read(text, kind !== 'array' && attribute(cell, 'cm') === undefined);
    if ('problem' in read) {
      this.reading.leftOut.add(kind === 'dataTable' ? 'dataTables' : read.problem);
      // Of an answer of several cells, each keeps its value.
      const fits = text !== undefined && text.length <= LIMITS.formula;
      return fits && kind !== 'array' && canBeWrittenBack(read.problem) ? { kept: text } : {};
    }
    return { ...read, ...(kind === 'array' ? this.#spill(element, place) : {}) };
  }

  #read(text: string | undefined, single: boolean): ReadFormula {
    if (text === undefined) return { problem: 'brokenFormulas' };
    const read = formulaOf(text, this.reading);
    return single && !('problem' in read) && intersects(text) ? { problem: 'intersections' } : read;
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
