import { isNoAnswer } from '../core/evaluate.js';
import type { NoAnswer } from '../core/output.js';
import type { RunPlan } from './input.js';
import { asGiven } from './ranges.js';
import { type Run, runOf } from './run.js';

/** The columns of a comparison. */
export const COMPARED = {
  present: { label: 'Present', help: 'A column of values beside the labels: the plan as it runs today.' },
  proposed: { label: 'Proposed', help: 'A column of values beside the labels: the plan as it might run.' },
} as const;

interface Compared<P> {
  readonly present: P;
  readonly proposed: P;
}

/** The runs of both plans, or which of them has none and why. */
export function comparedRuns({ present, proposed }: Compared<RunPlan>): Compared<Run> | NoAnswer {
  const runs = { present: runOf(present), proposed: runOf(proposed) };
  if (isNoAnswer(runs.present)) return { none: `${COMPARED.present.label}: ${runs.present.none}` };
  if (isNoAnswer(runs.proposed)) return { none: `${COMPARED.proposed.label}: ${runs.proposed.none}` };
  return runs as Compared<Run>;
}

/** A year's saving means the same beer both ways. */
export const yearRefusal = ({ present, proposed }: Compared<{ readonly yearVolume: number }>): string | undefined =>
  present.yearVolume === proposed.yearVolume
    ? undefined
    : `Year volume must be the same in both plans, but ${asGiven(present.yearVolume, 'hL')} and ${asGiven(proposed.yearVolume, 'hL')} were given.`;
