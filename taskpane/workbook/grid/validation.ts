import type { Validation } from '../../../src/sheets/sheet.js';
import type { ICellData } from '../engine/core.js';
import type { Entry } from '../entry/entry.js';

interface Ruled {
  readonly validation?: Validation;
  readonly note?: string;
  /** What a file says of the rule besides. */
  readonly rule?: Readonly<Record<string, string>>;
}

/** A sheet's rule for what may be typed and its explanation travel with the cell, into saved workbooks too. */
export const withRule = (cell: ICellData, { validation, note, rule }: Ruled): ICellData =>
  validation || note ? { ...cell, custom: { ...cell.custom, validation, note, ...(rule ? { rule } : {}) } } : cell;

/** The choice of a list that was meant, in its own letters: a space too many or a capital is nobody's mistake. */
export function meantChoice(rule: unknown, typed: string): string | undefined {
  const { kind, of } = (rule ?? {}) as Partial<Validation>;
  const same = typed.trim().toLowerCase();
  return kind === 'list' ? of?.find((choice) => choice.toLowerCase() === same) : undefined;
}

/** The rule's sentence where `typed`, understood as `cell`, breaks it. Formulas answer for themselves. */
export function brokenRule(rule: unknown, entry: Entry, typed: string, value: unknown): string | undefined {
  if (!rule || entry.kind === 'formula') return undefined;
  const { kind, limit, of, message } = rule as Validation;
  if (kind === 'list') {
    const known = of?.some((choice) => choice.toLowerCase() === typed.trim().toLowerCase()) ?? true;
    return known ? undefined : message;
  }
  if (typeof value !== 'number') return message;
  const [least, most] = limit ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  return value >= least && value <= most ? undefined : message;
}
