import { isDeepStrictEqual } from 'node:util';
import type { WorksheetFunction } from '../../functions/bind.js';
import { CellError } from '../functions/answers.js';

/** The host's error objects are shared, everything else is copied to the ground. */
function copyOf(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(copyOf);
  return typeof value === 'object' && value !== null && !(value instanceof CellError) ? structuredClone(value) : value;
}

function errorFault({ code, message }: CellError): string | undefined {
  if (!/^#[A-Z0-9_/]+[!?]?$/.test(code)) return `an error with the code ${JSON.stringify(code)}`;
  if (/ failed: .* Please report this/s.test(message)) return `an exception inside: ${message}`;
  if (code !== '#VALUE!' && code !== '#N/A') return undefined;
  if (!message.endsWith('.')) return `${code} without a whole sentence: ${JSON.stringify(message)}`;
  return message.length > 2000 ? `a message of ${message.length} characters` : undefined;
}

function cellFault(cell: unknown): string | undefined {
  if (cell instanceof CellError) return errorFault(cell);
  if (typeof cell === 'string') return undefined;
  if (typeof cell !== 'number') return `a cell of ${cell === null ? 'null' : typeof cell}`;
  return Number.isFinite(cell) && !Object.is(cell, -0) ? undefined : `the number ${Object.is(cell, -0) ? '−0' : cell}`;
}

function answerFault(answer: unknown): string | undefined {
  if (answer instanceof CellError) return errorFault(answer);
  if (!Array.isArray(answer)) return `neither a range nor an error, but ${typeof answer}`;
  const width = Array.isArray(answer[0]) ? answer[0].length : 0;
  if (width === 0) return 'an empty range';
  for (const row of answer) {
    if (!Array.isArray(row) || row.length !== width) return 'a ragged range';
    for (const cell of row) {
      const fault = cellFault(cell);
      if (fault !== undefined) return fault;
    }
  }
  return undefined;
}

/** What is wrong with how a function answers these arguments, or nothing. */
export function faultOf(fn: WorksheetFunction, args: readonly unknown[]): string | undefined {
  const before = copyOf(args);
  let answer: unknown;
  try {
    answer = fn(...args, {});
    const fault = answerFault(answer);
    if (fault !== undefined) return `It gave ${fault}.`;
    if (!isDeepStrictEqual(fn(...args, {}), answer)) return 'It gave another answer the second time.';
  } catch (cause) {
    return `It threw ${cause instanceof Error ? cause.message : String(cause)}.`;
  }
  return isDeepStrictEqual(args, before) ? undefined : 'It changed its arguments.';
}
