import { breakEvenPrice } from '../../cost/breakEvenPrice.js';
import { costPerHl } from '../../cost/costPerHl.js';
import { landedPrice } from '../../cost/landedPrice.js';
import { dryPrice } from '../../moisture/dryPrice.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { swapDose } from '../../stabiliser/swapDose.js';
import { referenceMoisture } from '../dosing/stabiliser.js';
import { call } from '../formula.js';
import type { At } from '../layout.js';
import type { Calculated } from '../list.js';

type Column = (key: string) => string;

const equalEffect = (q: Column, at: At): string => {
  const swapped = call(swapDose.id, [at('quoteDoseCorrected'), at('quoteKind'), q('kind'), at('quotePosition')]);
  return call(sameSolids.id, [swapped, referenceMoisture(q('kind')), q('moisture')]);
};

/** What the table has of an offer; duty is on the goods, as the function takes it where nothing is said. */
const LANDED = Object.keys(landedPrice.inputs).filter((key) => key !== 'dutyOn');

/** The columns that follow: one call each for all offers. The rank goes by the row, whatever an offer is called. */
export const CALCULATED: readonly Calculated[] = [
  {
    key: 'rank',
    label: 'Rank',
    unit: '',
    head: 'cheapest 1',
    digits: 0,
    formula: (q) => `RANK(${q('cost')},${q('cost')},1)`,
  },
  {
    key: 'cost',
    label: 'Cost',
    unit: costPerHl.output.unit,
    formula: (q) => call(costPerHl.id, [q('dose'), q('landed')]),
  },
  {
    key: 'landed',
    label: landedPrice.output.label,
    unit: landedPrice.output.unit,
    formula: (q) => call(landedPrice.id, LANDED.map(q)),
  },
  {
    key: 'dryPrice',
    label: dryPrice.output.label,
    unit: dryPrice.output.unit,
    formula: (q) => call(dryPrice.id, [q('landed'), q('moisture')]),
  },
  {
    key: 'dose',
    label: 'Dose at equal effect',
    unit: 'g/hL',
    formula: (q, at) => `IF(LEN(${q('ownDose')})>0,${q('ownDose')},${equalEffect(q, at)})`,
  },
  {
    key: 'dryDose',
    label: 'Dry dose',
    unit: 'g/hL',
    formula: (q) => call(sameSolids.id, [q('dose'), q('moisture'), '0']),
  },
  {
    key: 'breakEven',
    label: breakEvenPrice.output.label,
    unit: breakEvenPrice.output.unit,
    formula: (q, at) => call(breakEvenPrice.id, [at('quotePresentCost'), '0', q('dose')]),
  },
];

/** What each calculated column is, and where the given ones come from. */
export const methods: readonly (readonly [string, string])[] = [
  ['Landed price', landedPrice.method],
  ['Price per dry kg', dryPrice.method],
  ['Dose at equal effect', `own ladder dose where there is one, else ${swapDose.method}`],
  ['Break-even price', `landed price at which the offer costs as much per hL as the present powder`],
];
