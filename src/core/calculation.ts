import type { Given, Inputs, Values } from './input.js';
import type { NoAnswer, Output, Refused, Result } from './output.js';

/** Kinds of harm that a calculation's use can touch. The words stand once, in `cautions.ts`. */
export type CautionName = 'dust' | 'pressure' | 'caustic' | 'food law';

/** What an example shows: the cells that the worksheet would show, in the units of the declaration. */
export type Shown<O> = O extends { kind: 'number' }
  ? number
  : O extends { kind: 'text' }
    ? string
    : O extends { kind: 'column' }
      ? readonly string[]
      : O extends { kind: 'row' | 'report'; fields: infer F }
        ? { readonly [K in keyof F]?: number | string }
        : { readonly rows: number };

/**
 * One calculation, declared once. Worksheet function, metadata, explanations, forms, reference and the
 * tests that every calculation must pass are derived from it.
 */
export interface Calculation<I extends Inputs = Inputs, O extends Output = Output> {
  /** The worksheet function's name after `POWDER.`; never changed once released. */
  readonly id: Uppercase<string>;
  readonly summary: string;
  /** The question it answers, in a user's words. */
  readonly question: string;
  /** Each with label, unit, limits, usual range, help and source. */
  readonly inputs: I;
  readonly output: O;
  /** The formula as a textbook line. */
  readonly method: string;
  /** Where the method comes from. */
  readonly sources: readonly string[];
  /** What its use can touch; the words are in `CAUTIONS`. */
  readonly cautions?: readonly CautionName[];
  /** A worked example that the tests run. */
  readonly example: { readonly given: Given<I>; readonly result: Shown<O> };
  /** Rules between inputs, in SI: the sentence, or nothing. */
  refuse?(si: Values<I>): string | undefined;
  /** SI in, SI out. Pure: it may be handed the same record again with other values. */
  compute(si: Values<I>): Result<O> | NoAnswer | Refused;
}

/** Calculations that belong together, as pane and reference show them. */
export interface Family {
  readonly name: string;
  readonly summary: string;
  readonly calculations: readonly Calculation[];
}

/** Declares a calculation; the types of inputs and answer flow from the keys. */
export function calculation<const I extends Inputs, const O extends Output>(
  declared: Omit<Calculation<I, O>, 'example' | 'refuse' | 'compute'> & {
    readonly example: { readonly given: Given<NoInfer<I>>; readonly result: Shown<NoInfer<O>> };
    refuse?(si: Values<NoInfer<I>>): string | undefined;
    compute(si: Values<NoInfer<I>>): Result<NoInfer<O>> | NoAnswer | Refused;
  },
): Calculation<I, O> {
  return declared as Calculation<I, O>;
}
