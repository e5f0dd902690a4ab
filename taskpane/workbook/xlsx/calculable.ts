import type { Token } from '@borgar/fx/xlsx';
import { idOf } from '../../formula/ids.js';
import { parametersIn } from './parameters.js';
import type { LeftOut, Reading } from './reading.js';

/** What the reading of a formula needs to know of the workbook around it. */
export type Around = Pick<Reading, 'names' | 'knows'>;

const isReference = ({ type }: Token): boolean => type.startsWith('range') || type === 'structured';
const sheetOf = (value: string): string => value.slice(0, Math.max(0, value.lastIndexOf('!')));

/** What keeps the grid from calculating a formula, in the form in which the grid would write it; or nothing. */
export function hindrance(tokens: readonly Token[], { names, knows }: Around): LeftOut | undefined {
  const parameters = parametersIn(tokens);
  for (const token of tokens) {
    const { type, value } = token;
    if (type === 'structured') return 'tableFormulas';
    // References that begin with a book's number or name in brackets.
    if (isReference(token) && value.includes('[')) return 'external';
    if (isReference(token) && sheetOf(value).includes(':')) return 'severalSheets';
    if (type === 'operator' && value === '#') return 'unknownFunctions';
    if (parameters.has(token)) continue;
    if (type === 'func' && idOf(value) === undefined && !knows(value.toUpperCase())) return 'unknownFunctions';
    const name = value.slice(value.lastIndexOf('!') + 1).toLowerCase();
    if (type === 'range_named' && !names.has(name)) return 'unknownNames';
  }
  return undefined;
}

/** What another program still understands when the formula is written back as it was: the file holds all that it reads. */
export const canBeWrittenBack = (problem: LeftOut): boolean =>
  problem === 'intersections' ||
  problem === 'severalSheets' ||
  problem === 'unknownFunctions' ||
  problem === 'unknownNames' ||
  problem === 'heavyFormulas';
