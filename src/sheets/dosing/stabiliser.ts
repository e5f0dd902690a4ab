import { costPerHl } from '../../cost/costPerHl.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { FACTOR_SOURCE, KINDS, REFERENCE_MOISTURE } from '../../stabiliser/factors.js';
import { swapDose } from '../../stabiliser/swapDose.js';
import { swapRange } from '../../stabiliser/swapRange.js';
import { formatOf, text } from '../cells.js';
import { call } from '../formula.js';
import { type At, gap, heading, type Line } from '../layout.js';
import { KIND_NOW, KIND_PROPOSED, nowOf, proposedOf } from '../scenario.js';
import { type Step, said } from '../verdict.js';
import { columns, computed, input, result } from './lines.js';

/** The moisture at which the swap factors hold, by the kind that a place names. */
export const referenceMoisture = (place: string): string =>
  KINDS.reduceRight((rest, kind) => `IF(${place}="${kind}",${REFERENCE_MOISTURE[kind]},${rest})`, 'NA()');

/** Hydrogel and the dry powders are three times as far apart; no lot of a kind is so far from its usual moisture. */
const FAR_OFF = 0.2;

const SIDES = ['present', 'new'] as const;

/** Whether the moisture found is far from that of the kind named. */
const ofAnotherKind = (at: At, side: (typeof SIDES)[number]): string =>
  `ABS(${at(`${side}Moisture`)}-${at(`${side}UsualMoisture`)})>${FAR_OFF}`;

/** A kind and a moisture that do not go together: one of the two was not entered, and every dose rests on both. */
const goTogether = (at: At, name: string): readonly Step[] => {
  const side = name.startsWith('present') ? 'present' : 'new';
  const words = said('refused', at(name), 'Moisture is far from that of the kind named below: mend one of them.');
  return [(rest) => `IF(IFERROR(${ofAnotherKind(at, side)},FALSE),${words},${rest})`];
};

const swapCall = (at: At): string => call(swapRange.id, [at('doseCorrected'), at('presentKind'), at('newKind')]);

/** Low end, middle and high end, one below the other: one call spills them. */
const rangeLines: readonly Line[] = Object.values(swapRange.output.fields).map(({ label, unit }, place) => ({
  ...(place === 0 ? { marks: { swapRange: { column: 2, rows: 3 } } } : {}),
  cells: (at) => [
    text(label, 'label'),
    text('', 'note'),
    { ...(place === 0 ? { formula: `=TRANSPOSE(${swapCall(at)})` } : {}), format: formatOf(unit), style: 'result' },
    text(unit, 'unit'),
    ...columns.figures.map(() => text('', 'note')),
    text('', 'note'),
    text(place === 0 ? `${swapRange.method}. Try these three on your beer.` : '', 'note'),
  ],
}));

const assumedLine: Line = computed(
  SIDES.map((side) => `${side}UsualMoisture`),
  'Moisture that the swap factors assume',
  (at) => SIDES.map((side) => `=${referenceMoisture(at(`${side}Kind`))}`),
  'fraction',
  FACTOR_SOURCE,
);

/** 0 and 1 are ends of a range and no percentages: a cell for percentages would read a typed 1 as 1 %. */
export const POSITION_FORMAT = '0.00';

export const stabiliserLines: readonly Line[] = [
  heading('Stabiliser'),
  input('presentDose', swapDose, 'dose', nowOf('stabiliserDose'), {
    label: 'Present dose as bought',
    digits: 1,
    help: 'As bought, whatever its moisture: the sheet brings it to the moisture that the swap factors assume.',
  }),
  input(['presentMoisture', 'newMoisture'], sameSolids, 'moisture', [0.64, proposedOf('stabiliserMoisture')], {
    label: 'Moisture as found',
    from: 'Of your own oven test (OVENMOISTURE) or the supplier’s certificate.',
    further: goTogether,
  }),
  input(['presentKind', 'newKind'], swapDose, ['fromKind', 'toKind'], [KIND_NOW, KIND_PROPOSED], { label: 'Kind' }),
  assumedLine,
  result(
    'doseCorrected',
    sameSolids,
    { amount: 'presentDose', moisture: 'presentMoisture', newMoisture: 'presentUsualMoisture' },
    { label: 'Present dose at that moisture', unit: 'g/hL' },
  ),
  gap,
  heading('Stabiliser dose after the swap'),
  ...rangeLines,
  input(['', 'position'], swapDose, 'position', swapDose.inputs.position.preset, {
    label: 'Position in that range',
    from: 'Your own choice: 0 is the low end, 1 the high end.',
    format: POSITION_FORMAT,
  }),
  result(
    ['', 'newDoseUsual'],
    swapDose,
    { dose: 'doseCorrected', fromKind: 'presentKind', toKind: 'newKind', position: 'position' },
    { label: 'Dose at the moisture that the factors assume' },
  ),
  result(
    ['', 'newDose'],
    sameSolids,
    { amount: 'newDoseUsual', moisture: 'newUsualMoisture', newMoisture: 'newMoisture' },
    { label: 'Proposed dose as bought', unit: 'g/hL' },
  ),
  input(['presentPrice', 'newPrice'], costPerHl, 'price', [nowOf('stabiliserPrice'), proposedOf('stabiliserPrice')], {
    label: 'Stabiliser price',
    from: 'As on the sheet Quotes: landed, per kg as bought.',
  }),
];
