import type { Unit } from '../../core/units.js';
import { answer, type Line } from '../layout.js';
import { examplesLine } from '../opening.js';
import { answered } from './lines.js';

type Answer = readonly [label: string, now: string, proposed: string, unit: Unit, from: string, digits?: number];

/** Labels and the figures further down that they repeat. */
const ANSWERS: readonly Answer[] = [
  ['Stabiliser dose as bought', 'presentDose', 'newDose', 'g/hL', 'Stabiliser', 1],
  ['Body feed', 'feed', 'proposedFeed', 'g/hL', 'Body feed', 1],
  ['Dosing pump setting', 'pump', 'newPump', 'L/h', 'Slurry make-up and dosing pump'],
  ['Run', 'run.volume.0', 'run.volume.1', 'hL', 'Predicted run'],
  ['What ends the run', 'run.end.0', 'run.end.1', '', 'Predicted run'],
  ['Filter aid and stabiliser', 'powderCost', 'newPowderCost', 'money/hL', 'Powder cost'],
];

export const answerLines: readonly Line[] = answer([
  ...ANSWERS.map(([label, now, proposed, unit, from, digits]) =>
    answered(
      [`answer.${label}.0`, `answer.${label}.1`],
      label,
      (at) => [`=${at(now)}`, `=${at(proposed)}`],
      unit,
      `from the part ${from} below`,
      digits,
    ),
  ),
  examplesLine(),
]);
