import type { Unit } from '../../../src/core/units.js';
import type { Scalar } from '../../formula/arithmetic.js';
import { CellError } from '../../workbook/formula/cellError.js';
import type { Setting } from '../setting.js';

/** What a cell holds, as this person reads it. */
export function shownCell(cell: Scalar, unit: Unit, { texts, formats }: Setting): string {
  if (cell instanceof CellError) return cell.code;
  if (typeof cell === 'number') return formats.amount(cell, unit);
  if (typeof cell === 'boolean') return cell ? texts.selected.yes : texts.selected.no;
  return cell || texts.selected.blank;
}
