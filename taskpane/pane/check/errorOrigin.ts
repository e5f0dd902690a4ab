import { parse, tokenize } from '@borgar/fx';
import { isErrorCode } from '../../formula/evaluate.js';
import { referencesIn } from '../../formula/references.js';
import { separatedByCommas } from '../../formula/separators.js';
import { cellReference } from '../../host/address.js';
import type { CellContent } from '../../host/host.js';
import type { RangeReference, Reference } from '../../host/reference.js';
import type { WorkbookContents } from '../../host/workbookContents.js';
import { Snapshot } from './snapshot.js';

const isError = (content: CellContent): boolean => typeof content === 'string' && isErrorCode(content);
const isFormula = (content: CellContent): content is string => typeof content === 'string' && content.startsWith('=');

/** What a formula reads; nothing where it is none that can be read. */
function readBy(formula: string, sheet: string): readonly Reference[] {
  try {
    return referencesIn(parse(separatedByCommas(tokenize(formula))), sheet);
  } catch {
    return [];
  }
}

/** The formula that fills a cell: its own, or the nearest one above or to the left whose answer spills into it. */
function formulaBehind(snapshot: Snapshot, { sheet, top, left }: RangeReference): string | undefined {
  const at = (row: number, column: number) => snapshot.cell('formulas', sheet, row, column);
  const own = at(top, left);
  if (isFormula(own)) return own;
  for (let row = top; row >= 0; row -= 1) {
    for (let column = left; column >= 0; column -= 1) {
      const one = at(row, column);
      if (isFormula(one)) return one;
      if (one !== null) break;
    }
    if (at(row, left) !== null) break;
  }
  return undefined;
}

function firstError(snapshot: Snapshot, reference: Reference, known: ReadonlySet<string>): RangeReference | undefined {
  const range = snapshot.rectangle(reference);
  if (!range) return undefined;
  for (const [row, line] of (snapshot.read(range) ?? []).entries()) {
    for (const [column, content] of line.entries()) {
      if (!isError(content)) continue;
      const place = cellReference(range.sheet, range.top + row, range.left + column);
      if (!known.has(JSON.stringify(place))) return place;
    }
  }
  return undefined;
}

/** The cell in which an error began: followed back through what formulas read, as far as they can be read. */
export function errorOrigin(contents: WorkbookContents, start: RangeReference): RangeReference {
  const snapshot = new Snapshot(contents);
  const known = new Set<string>();
  let place = start;
  for (;;) {
    known.add(JSON.stringify(place));
    const { sheet } = place;
    const references = readBy(formulaBehind(snapshot, place) ?? '', sheet);
    const before = references.map((one) => firstError(snapshot, one, known)).find((one) => one !== undefined);
    if (!before) return place;
    place = before;
  }
}
