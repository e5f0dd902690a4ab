import { costPerHl } from '../../cost/costPerHl.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { FACTOR_SOURCE, KINDS, REFERENCE_MOISTURE } from '../../stabiliser/factors.js';
import { swapDose } from '../../stabiliser/swapDose.js';
import { swapRange } from '../../stabiliser/swapRange.js';
import { formatOf, resultCell, text } from '../cells.js';
import { call } from '../formula.js';
import { type At, gap, heading, type Line } from '../layout.js';
import { KIND_NOW, KIND_PROPOSED, nowOf, proposedOf } from '../scenario.js';
import { columns, input, result, row } from './lines.js';

/** The moisture at which the swap factors hold, by the kind that a place names. */
export const referenceMoisture = (place: string): string =>
  KINDS.reduceRight((rest, kind) => `IF(${place}="${kind}",${REFERENCE_MOISTURE[kind]},${rest})`, 'NA()');

/** Hydrogel and the dry powders are three times as far apart; no lot of a kind is so far from its usual moisture. */
const FAR_OFF = 0.2;

const SIDES = ['present', 'new'] as const;

/** Whether the moisture found is far from that of the kind named. */
export const ofAnotherKind = (at: At, side: (typeof SIDES)[number]): string =>
  `ABS(${at(`${side}Moisture`)}-${at(`${side}UsualMoisture`)})>${FAR_OFF}`;

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
    text(place === 0 ? `${swapRange.method}. Try these three on your beer.` : '', 'note'),
  ],
}));

/** Judged where a moisture belongs to another kind, for then one of the two was not entered. */
const assumedLine: Line = {
  marks: Object.fromEntries(SIDES.map((side, index) => [`${side}UsualMoisture`, { column: index + 1 }])),
  judged: [{ cells: { column: 1, columns: columns.figures.length }, by: { column: columns.judgement } }],
  cells: (at) =>
    row(
      'Moisture that the swap factors assume',
      SIDES.map((side) => resultCell(`=${referenceMoisture(at(`${side}Kind`))}`, 'fraction')),
      'fraction',
      SIDES.map((side) => ({
        formula: `=IF(${ofAnotherKind(at, side)},"unusual: the moisture found is far from that of "&${at(`${side}Kind`)}&", so check both","usual")`,
        style: 'note',
      })),
      FACTOR_SOURCE,
    ),
};

export const stabiliserLines: readonly Line[] = [
  heading('Stabiliser'),
  input('presentDose', swapDose, 'dose', nowOf('stabiliserDose'), { label: 'Present dose as bought', digits: 1 }),
  input(['presentMoisture', 'newMoisture'], sameSolids, 'moisture', [0.64, proposedOf('stabiliserMoisture')], {
    label: 'Moisture as found',
    from: 'Invented: your own oven test (OVENMOISTURE) or the supplier’s certificate goes here.',
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
    from: 'Invented, as on the sheet Quotes: landed, per kg as bought.',
  }),
];
