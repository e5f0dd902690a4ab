import { text } from '../cells.js';
import { type At, heading, type Line, note } from '../layout.js';

/** A sentence that follows from the figures above. */
const watched = (name: string, label: string, formula: (at: At) => string): Line => ({
  marks: { [name]: { column: 1 } },
  cells: (at) => [text(label, 'label'), { formula: formula(at), style: 'note' }],
});

const tooSmall = (at: At, needed: string) => `${at(needed)}>${at('bufferThere')}`;

export const watchLines: readonly Line[] = [
  heading('What to watch'),
  watched(
    'watchRun',
    'Run',
    (at) =>
      `=IF(${at('run.volume.1')}<${at('run.volume.0')},"The proposed run is shorter than the present one: a swap pays only if the body feed is cut far enough.","The proposed run is as long as the present one, or longer.")`,
  ),
  watched(
    'watchSlurry',
    'Slurry',
    (at) =>
      `=IF(${at('newCharge')}<${at('run.time.1')},"The slurry tank runs empty before the proposed run ends: plan a make-up.","One full slurry tank lasts the proposed run.")`,
  ),
  watched(
    'watchBuffer',
    'Buffer tank',
    (at) =>
      `=IF(${tooSmall(at, 'newBuffer')},"The buffer tank is too small for the proposed powder.",IF(${tooSmall(at, 'buffer')},"The buffer tank is too small for the present powder, but large enough for the proposed one.","The buffer tank is large enough for both powders."))`,
  ),
  note('Equal dry silica is not equal effect: settle the dose by a ladder on your own beer (LADDERFIT, LADDERDOSE).'),
  note('Cut the feed in steps, and watch haze behind the filter and the pressure rise at each.'),
  note('The swap factors are a start for trials. Beer that was held longer or colder may need another dose.'),
  note('Permeabilities hold for the powders and beer that they were fitted on: fit your own on the sheet Trial log.'),
];
