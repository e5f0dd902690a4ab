import type { Calculation } from '../../../src/core/calculation.js';
import type { Handed } from '../../../src/core/evaluate.js';
import type { Cell } from '../../../src/core/input.js';
import { a1 } from '../../host/a1.js';
import { type Notation, written } from '../../workbook/entry/notation.js';
import type { LaidOut } from '../form/block.js';

/** A longer list of constants is harder to read than the range it stands for. */
const MOST_CONSTANTS = 8;

function literal(cell: Cell, notation: Notation): string {
  if (typeof cell === 'number') return written(cell, notation);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  return `"${(cell ?? '').replaceAll('"', '""')}"`;
}

/** Whether the formula reads well with its values written into it. */
export const fitsOnALine = (handed: Readonly<Record<string, Handed>>): boolean =>
  Object.values(handed).every((one) =>
    Array.isArray(one) ? one.length <= MOST_CONSTANTS : typeof one !== 'object' || one === null,
  );

/** What a person in this country would type: with the values in it, or with ranges where they are many. */
export function formulaText(
  { id, inputs }: Pick<Calculation, 'id' | 'inputs'>,
  handed: Readonly<Record<string, Handed>>,
  laidOut: LaidOut,
  notation: Notation,
): string {
  const separator = notation.decimal === ',' ? ';' : ',';
  if (!fitsOnALine(handed)) {
    const [row, column] = laidOut.formula;
    const formula = laidOut.block.rows[row]?.[column]?.formula?.(a1) ?? '';
    return formula.replaceAll(',', separator);
  }
  // A preset at the end goes without saying; before another input it has to be written.
  const entries = Object.entries(inputs);
  const unsaid = ([key, input]: (typeof entries)[number]) =>
    handed[key] === undefined || ('preset' in input && handed[key] === input.preset);
  const said = entries.slice(0, entries.findLastIndex((entry) => !unsaid(entry)) + 1);
  const words = said.map(([key]) => {
    const one = handed[key] as Cell | undefined | readonly Cell[];
    if (one === undefined) return '';
    return Array.isArray(one)
      ? `{${one.map((cell: Cell) => literal(cell, notation)).join(';')}}`
      : literal(one as Cell, notation);
  });
  return `=POWDER.${id}(${words.join(separator)})`;
}
