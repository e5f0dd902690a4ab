import { ArrayValueObject, type BaseValueObject, type NumberValueObject } from '../../engine/formula.js';
import { engineClass, type FunctionClass } from './engineClass.js';
import { order, rank } from './order.js';

interface Position {
  row: number;
  column: number;
}

/** The engine's numbers for "the nearest below" and "the nearest above". */
const BELOW = 1;
const ABOVE = 2;

/** An array whose nearest element is looked for among values of the same kind, by their order. */
class Searched extends ArrayValueObject {
  override orderSearch(value: BaseValueObject, searchType = BELOW, isDesc = false, isFuzzy = false) {
    if (searchType !== BELOW && searchType !== ABOVE) return super.orderSearch(value, searchType, isDesc, isFuzzy);
    let nearest: BaseValueObject | undefined;
    let place: Position | undefined;
    const visit = (item: BaseValueObject | null, row: number, column: number): void => {
      if (!item || item.isNull() || item.isError() || rank(item) !== rank(value)) return;
      const side = order(item, value);
      if (searchType === BELOW ? side > 0 : side < 0) return;
      const nearer = nearest ? order(item, nearest) * (searchType === BELOW ? 1 : -1) : 1;
      // In a sorted column the last of equal values is the answer to "nearest below", the first to an exact one.
      if (nearer < 0 || (nearer === 0 && !this.takesLast)) return;
      nearest = item;
      place = { row, column };
    };
    if (isDesc) this.iteratorReverse((item, row, column) => visit(item as BaseValueObject | null, row, column));
    else this.iterator((item, row, column) => visit(item as BaseValueObject | null, row, column));
    return place;
  }

  takesLast = false;
}

function searched(array: BaseValueObject, takesLast: boolean): BaseValueObject {
  if (!array.isArray()) return array;
  const given = array as ArrayValueObject;
  const found = new Searched({
    calculateValueList: given.getArrayValue(),
    rowCount: given.getRowCount(),
    columnCount: given.getColumnCount(),
    unitId: given.getUnitId(),
    sheetId: given.getSheetId(),
    row: given.getCurrentRow(),
    column: given.getCurrentColumn(),
  });
  found.takesLast = takesLast;
  return found;
}

const isBelow = (type: BaseValueObject | undefined): boolean =>
  !type || (type.isNumber() && Number((type as NumberValueObject).getValue()) > 0);

/**
 * MATCH, XMATCH and XLOOKUP of the nearest value.
 * What: `=MATCH("a",{1,2,3},1)`, `=XLOOKUP("a",{1,2,3},{1,2,3},"none",-1)`, `=MATCH("bb",{"a","b","c"},1)`.
 * Expected: #N/A, "none", 2 (only values of the same kind are compared; ECMA-376 part 1, 18.17.7.200; OpenFormula 6.14.9).
 * Got: 1, 1, 1.
 */
export function nearest(name: 'MATCH' | 'XMATCH' | 'XLOOKUP'): FunctionClass {
  return class extends engineClass(name) {
    override calculate(value: BaseValueObject, array: BaseValueObject, ...rest: BaseValueObject[]) {
      return super.calculate(value, searched(array, name === 'MATCH' && isBelow(rest[0])), ...rest);
    }
  };
}
