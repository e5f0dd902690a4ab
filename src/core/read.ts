import type { Cell, ChoiceInput, OneCellInput, TextInput } from './input.js';
import type { Refused } from './output.js';
import { toSI } from './units.js';
import {
  anyOf,
  isBlank,
  isMissing,
  isNoNumber,
  isText,
  isTruth,
  type Limited,
  outsideLimits,
  plainNumber,
  quoted,
} from './wording.js';

export const refused = (sentence: string): Refused => ({ refused: sentence });

/** Whether an input was refused; `refused` then says which, its limits, its unit and what was given. */
export const isRefused = (value: unknown): value is Refused =>
  typeof value === 'object' && value !== null && 'refused' in value;

/** Why a cell is refused as this number, or nothing where it serves. A blank cell is 0. */
export function numberRefusal(input: Limited, cell: Cell): string | undefined {
  if (typeof cell === 'string') return isText(input, cell);
  if (typeof cell === 'boolean') return isTruth(input, cell);
  const value = cell ?? 0;
  const [least, most] = input.limit;
  if (value >= least && value <= most) return undefined;
  if (value === 0) return isBlank(input);
  return Number.isFinite(value) ? outsideLimits(input, value) : isNoNumber(input);
}

/** One cell read as a number: its value in SI, or the refusal. */
export function readNumber(input: Limited, cell: Cell): number | Refused {
  const refusal = numberRefusal(input, cell);
  return refusal === undefined ? toSI(Number(cell), input.unit) : refused(refusal);
}

const normal = (text: string): string => text.trim().toLowerCase();

export function choiceRefusal(input: ChoiceInput, cell: Cell): string | undefined {
  const words = anyOf(input.of);
  if (cell === null || cell === '' || cell === 0) return `${input.label} must be ${words}, but the cell is blank or 0.`;
  if (typeof cell !== 'string') {
    const given = typeof cell === 'number' ? plainNumber(cell) : String(cell).toUpperCase();
    return `${input.label} must be ${words}, but ${given} was given.`;
  }
  const word = normal(cell);
  if (input.of.some((one) => normal(one) === word)) return undefined;
  const reason = Object.entries(input.unfit ?? {}).find(([one]) => normal(one) === word)?.[1];
  return `${input.label} must be ${words}, but ${quoted(cell)} was given${reason ? `: ${reason}` : '.'}`;
}

export function readChoice(input: ChoiceInput, cell: Cell): string | Refused {
  const refusal = choiceRefusal(input, cell);
  if (refusal !== undefined) return refused(refusal);
  const word = normal(String(cell));
  return input.of.find((one) => normal(one) === word) as string;
}

function readText(input: TextInput, cell: Cell): string | Refused {
  if (typeof cell === 'string' && cell.trim() !== '') return cell.trim();
  if (cell === null || cell === 0 || typeof cell === 'string') {
    return refused(`${input.label} must be a text, but the cell is blank or 0.`);
  }
  return refused(`${input.label} must be a text, but ${String(cell).toUpperCase()} was given.`);
}

/** One cell read as any one-cell input: its value for `compute`, or the refusal. */
export function readCell(input: OneCellInput, cell: Cell): number | string | boolean | null | Refused {
  switch (input.kind) {
    case 'number':
      return readNumber(input, cell);
    case 'choice':
      return readChoice(input, cell);
    case 'text':
      return readText(input, cell);
    case 'cell':
      return cell;
  }
}

/** What an input is when nothing at all was handed over: its preset, undefined, or a refusal. */
export function readOmitted(input: OneCellInput): number | string | undefined | null | Refused {
  switch (input.kind) {
    case 'number':
      if (input.preset !== undefined) return toSI(input.preset, input.unit);
      return input.optional ? undefined : refused(isMissing(input));
    case 'choice':
      return input.preset ?? refused(`${input.label} must be ${anyOf(input.of)}, but nothing was given.`);
    case 'text':
      return refused(`${input.label} must be a text, but nothing was given.`);
    case 'cell':
      return null;
  }
}
