import type { Calculation } from '../../../../src/core/calculation.js';
import { answer, isNoAnswer } from '../../../../src/core/evaluate.js';
import type { Inputs, Values } from '../../../../src/core/input.js';
import type { NoAnswer, Output, Refused, Result } from '../../../../src/core/output.js';
import { isRefused } from '../../../../src/core/read.js';
import { fromSI, type Unit } from '../../../../src/core/units.js';
import type { Axis, Picture } from '../picture.js';
import type { Speech } from '../speech.js';

/** Draws one answered call: its inputs in SI into a picture, or into why there is none. */
export type Figure = (si: Readonly<Record<string, unknown>>, speech: Speech) => Picture | NoAnswer | Refused;

type Answered<O> = Exclude<Result<O>, NoAnswer | Refused>;

/** A figure of one calculation: what it draws comes from the inputs and the answer that the library gives. */
export function figureOf<I extends Inputs, O extends Output>(
  calculation: Calculation<I, O>,
  draw: (si: Values<I>, answer: Answered<O>, speech: Speech) => Picture | NoAnswer,
): readonly [id: string, figure: Figure] {
  return [
    calculation.id,
    (si, speech) => {
      const answered = answer(calculation as unknown as Calculation, si);
      if (isNoAnswer(answered) || isRefused(answered)) return answered;
      return draw(si as Values<I>, answered as Answered<O>, speech);
    },
  ];
}

/** The axis of a declared field or input. */
export const axisOf = ({ label, unit }: { readonly label: string; readonly unit: Unit }): Axis => ({ label, unit });

export const shown = (values: ArrayLike<number>, unit: Unit): number[] =>
  Array.from(values, (one) => fromSI(one, unit));
